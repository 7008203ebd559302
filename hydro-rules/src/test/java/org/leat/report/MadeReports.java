package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.AssumedValue.SensitiveVerdict;
import org.leat.check.Checker;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Finding;
import org.leat.check.Identity;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Message;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.RulePack;
import org.leat.check.Rulebook;
import org.leat.check.Settings;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LevelChange;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.RuleSettings;
import org.leat.check.WayOut;
import org.leat.file.DesignReader;
import org.leat.file.Position;
import org.leat.quantity.QuantityKind;

/** Reports put together by hand, so that writers are tested without a plant. */
final class MadeReports {

    private static final Rule BARREL = Rule.of("barrel/overflow", Level.ERROR, "level in the barrel")
            .why("It spills.")
            .formula("h")
            .judged("raining")
            .source("Handbook of Barrels, p. 7")
            .limit("brim", QuantityKind.LENGTH, 0.9, "m", RuleCard.COMMON_PRACTICE, Safer.LOWER)
            .fails("spills", "{name} spills at {rain:mm}: {value}, {limit}, {margin}.")
            .passes("holds", "{name} holds {rain,2}.")
            .judgeAll(j -> List.of())
            .advice("bigger", "A barrel of {height:cm}.", (j, failure) -> Stream.empty())
            .build();

    static final RulePack PACK = new RulePack() {
        @Override
        public String name() {
            return "barrels";
        }

        @Override
        public List<Rule> rules() {
            return List.of(BARREL);
        }
    };

    private MadeReports() {}

    static Rulebook rulebook() {
        return Checker.of(List.of(PACK)).rulebook();
    }

    static Rulebook changedRulebook() {
        Settings settings = new Settings(Map.of(
                "barrel/overflow",
                new RuleSettings(
                        Map.of("brim", new LimitChange(0.8, Grounds.of("house.yaml:3", "splashing"))),
                        new LevelChange(Level.WARNING, new Grounds("house.yaml:4", "it only wets", "A. Example", true)),
                        null)));
        return Checker.of(List.of(PACK), settings).rulebook();
    }

    static Report report() {
        List<Finding> findings = new ArrayList<>();
        Comparison tooHigh = Comparison.atMost(1.2, 0.9, QuantityKind.LENGTH).setBy("brim");
        Comparison fine = Comparison.atMost(0.5, 0.9, QuantityKind.LENGTH).setBy("brim");
        findings.add(finding(Kind.FAIL, Level.ERROR, "/barrel[east]/height", "raining", tooHigh, "spills", 4, true));
        findings.add(finding(Kind.FAIL, Level.NOTE, "/barrel[west]/height", "raining", tooHigh, "spills", 7, false));
        findings.add(finding(Kind.PASS, Level.ERROR, "/barrel[north]/height", "raining", fine, "holds", 9, false));
        findings.add(finding(Kind.OPEN, Level.ERROR, "/barrel[south]", "", null, "common.not-given", 11, false));
        findings.sort(null);
        return Report.of(
                new Report.Subject("dir with blank/ä:b.yaml", "Barrels", ""),
                findings,
                Report.SolvedPlant.NOTHING,
                List.of());
    }

    static Report hostile() {
        Outcome outcome = new Outcome.Fail(
                new Identity("barrel/overflow", "/barrel[\u001b[31mred\u202e]", ""),
                Level.ERROR,
                null,
                Message.of(
                        "spills", Arg.of("rain", 1, QuantityKind.LENGTH), Arg.of("name", "\u001b]0;x\u0007\r\nname")));
        Finding finding = Finding.of(outcome, new Position("a\u001b.yaml", 1, 1, 1, 2));
        return Report.of(
                new Report.Subject("a\u001b.yaml", "x\u0000y", ""),
                List.of(finding),
                Report.SolvedPlant.NOTHING,
                List.of());
    }

    static Report unreadable() {
        var reading = DesignReader.read("format: 1\nname: x\nsiet: 3\n", "bad.yaml");
        return Report.unreadable("bad.yaml", reading.problems());
    }

    private static Finding finding(
            Kind kind, Level level, String path, String during, Comparison c, String message, int line, boolean ways) {
        Message said = message.startsWith("common")
                ? Message.of(message, Arg.at("field", path))
                : Message.of(message, Arg.of("rain", 0.03, QuantityKind.LENGTH), Arg.of("name", "east"));
        Identity identity = new Identity("barrel/overflow", path, during);
        Outcome outcome = switch (kind) {
            case FAIL -> new Outcome.Fail(identity, level, c, said);
            case PASS -> new Outcome.Pass(identity, level, c, said);
            default -> new Outcome.Open(identity, level, c, said, path);
        };
        List<WayOut> out = ways
                ? List.of(new WayOut(
                        Message.of("bigger", Arg.of("height", 1.5, QuantityKind.LENGTH)),
                        List.of(new Edit(
                                path, org.leat.quantity.Si.quantity(1.5, "m", javax.measure.quantity.Length.class))),
                        OptionalDouble.of(-12.4)))
                : List.of();
        List<SensitiveVerdict> rests =
                ways ? List.of(new SensitiveVerdict("/weather", Kind.PASS, Kind.FAIL)) : List.of();
        return Finding.of(outcome, new Position("dir with blank/ä:b.yaml", line, 13, line, 18))
                .with(out, List.of())
                .restingOn(rests);
    }
}
