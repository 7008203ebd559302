package org.example.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.design.Design;
import org.leat.rulefile.RuleFile;

class RegisterTest {

    /** As much as people hand in: what is optional is left out. */
    private static final String SHORT =
            """
            format: 1
            name: upper bend
            site:
              gross-head: 24 m
            penstock:
              sections:
                - name: run
                  pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }
                  length: 90 m
            nozzles:
              open: [10 mm]
            alternator:
              open-circuit: { kind: volts-at-speed, voltage: 21 V, speed: 1000 rpm }
              winding: { resistance-between-leads: 0.2 Ω }
              pole-pairs: 6
            battery:
              chemistry: lithium-iron-phosphate
              cells-in-series: 8
              capacity: 100 Ah
            """;

    private final Register register = new Register();

    @Test
    void all_artifacts_are_modules_here() {
        assertEquals("org.leat.model", Design.class.getModule().getName());
        assertEquals("org.leat.rules", Checker.class.getModule().getName());
        assertEquals(
                "org.leat.rules.expressions", RuleFile.class.getModule().getName());
        assertEquals("org.example.register", Register.class.getModule().getName());
    }

    @Test
    void a_design_with_optional_fields_left_out_is_judged_and_what_is_missing_is_open() {
        Register.Answer answer = register.enter(SHORT);
        assertTrue(answer.open() > 0);
        assertTrue(answer.reasons().stream().noneMatch(r -> r.startsWith("valley/")), answer.toString());
    }

    @Test
    void the_valleys_rule_and_the_built_in_ones_speak_together() {
        Register.Answer answer = register.enter(SHORT.replace("[10 mm]", "[20 mm, 20 mm]").replace("24 m", "124 m"));
        assertFalse(answer.entered());
        assertTrue(answer.reasons().stream().anyMatch(r -> r.startsWith("valley/kept-flow: The plant takes")), answer.toString());
        assertTrue(answer.reasons().stream().anyMatch(r -> r.startsWith("penstock/static-pressure")), answer.toString());
    }

    @Test
    void the_report_is_written_for_programs() {
        assertTrue(register.file(SHORT).contains("\"valley/kept-flow\""));
    }

    @Test
    void a_mistake_is_told_at_its_line() {
        assertTrue(register.enter(SHORT.replace("63 mm", "63 bar")).reasons().get(0).startsWith("handed-in.yaml:8:"));
    }
}
