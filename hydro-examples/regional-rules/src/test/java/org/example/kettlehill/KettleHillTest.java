package org.example.kettlehill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.RulePack;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleExamples;
import org.leat.check.testing.RuleTestKit;
import org.leat.rulefile.RuleFile;
import org.leat.rulefile.RuleFile.RuleFileReading;
import org.leat.settings.SettingsFiles;

class KettleHillTest {

    private static final String DESIGN = """
            format: 1
            name: example
            site:
              gross-head: 24 m
            penstock:
              sections:
                - name: run
                  pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }
                  length: 90 m
            nozzles:
              open: [10 mm]
              available: [8 mm, 10 mm]
            alternator:
              open-circuit: { kind: volts-at-speed, voltage: 21 V, speed: 1000 rpm }
              winding: { resistance-between-leads: 0.2 Ω }
            battery:
              chemistry: lithium-iron-phosphate
              cells-in-series: 8
              capacity: 200 Ah
            """;

    private final RulePack java = new KettleHillPack();
    private final RuleExamples fullByEvening = RuleExamples.of(java, "kettlehill/full-by-evening", DESIGN);
    private final RuleExamples spareNozzle = RuleExamples.of(java, "kettlehill/spare-nozzle", DESIGN);

    @Test
    void a_bank_that_the_plant_fills_in_a_day_passes() {
        fullByEvening.passes();
    }

    @Test
    void a_bank_that_is_too_large_fails() {
        fullByEvening.with("200 Ah", "900 Ah").fails();
    }

    @Test
    void a_smaller_nozzle_in_the_drawer_passes() {
        spareNozzle.passes();
    }

    @Test
    void no_smaller_nozzle_fails_and_the_way_out_is_carried_out() {
        spareNozzle.with("[8 mm, 10 mm]", "[10 mm]").fails();
    }

    @Test
    void nozzles_on_hand_that_are_not_stated_are_asked_for() {
        spareNozzle.with("  available: [8 mm, 10 mm]\n", "").open("/nozzles/available");
    }

    @Test
    void the_pack_is_found() {
        List<String> names = ServiceLoader.load(RulePack.class).stream()
                .map(found -> found.get().name())
                .toList();
        assertTrue(names.contains("kettle-hill"), names.toString());
    }

    @Test
    void the_rules_without_java_pass_and_fail() throws Exception {
        RuleFileReading reading = RuleFile.read(Path.of("rules/kettle-hill.yaml"));
        assertEquals(List.of(), reading.problems());
        RulePack written = Objects.requireNonNull(reading.pack());
        RuleExamples pressure = RuleExamples.of(written, "kettlehill/crew-pressure", DESIGN);
        pressure.passes();
        pressure.with("24 m", "60 m").fails();
        RuleExamples head = RuleExamples.of(written, "kettlehill/head-kept", DESIGN);
        head.passes();
        head.with("open: [10 mm]", "open: [20 mm, 20 mm]").fails();
    }

    @Test
    void every_example_in_the_files_is_found_to_be_what_it_expects() throws Exception {
        RulePack written = Objects.requireNonNull(
                RuleFile.read(Path.of("rules/kettle-hill.yaml")).pack());
        RuleTestKit kit = new RuleTestKit(Checker.of(List.of(java, written)));
        for (Example example : RuleTestKit.examples(Path.of("src/test/examples"))) {
            assertEquals(List.of(), kit.differences(example), example.id());
        }
    }

    @Test
    void the_settings_read_without_a_problem() {
        assertEquals(
                List.of(),
                SettingsFiles.read(Path.of("settings/kettle-hill.yaml")).problems());
    }
}
