package org.leat.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.AssumedValue;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Finding;
import org.leat.check.Limit;
import org.leat.check.Message;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.check.WayOut;
import org.leat.choice.Overview;
import org.leat.file.Names;
import org.leat.file.Position;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.PressureProfile;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.QuantityText;
import org.leat.sure.Sureness;

/** Fills the shapes of {@link JsonModel}. */
final class JsonShapes {

    private final Wording wording;

    JsonShapes(Wording wording) {
        this.wording = wording;
    }

    JsonModel.DesignEntry design(Report report) {
        return design(report, null, null);
    }

    JsonModel.DesignEntry design(Report report, @Nullable Overview overview, @Nullable Sureness sureness) {
        return new JsonModel.DesignEntry(
                report.file(),
                report.design(),
                report.alternative().isEmpty() ? null : report.alternative(),
                report.readable(),
                report.judgedOn().isEmpty() ? null : ImplausibleNumbers.phrases(report, wording),
                report.problems().stream().map(JsonShapes::problem).toList(),
                report.findings().stream().map(this::finding).toList(),
                report.assumptions().stream().map(this::assumption).toList(),
                report.unsolved().stream().map(Amount.Unknown::path).toList(),
                Names.ofConstant(report.regulator()),
                report.running().stream().map(JsonShapes::operating).toList(),
                report.bus().list().stream().map(JsonShapes::bus).toList(),
                report.profile().points().isEmpty() ? null : pressures(report.profile()),
                report.alternatives().stream().map(this::design).toList(),
                JsonAccepted.idle(report),
                JsonAccepted.absent(report),
                report.day() == null ? null : report.day().toString(),
                overview == null ? null : new JsonOverview(this).of(overview),
                sureness == null ? null : JsonSureness.of(sureness));
    }

    JsonModel.RuleEntry rule(RuleInForce rule) {
        return new JsonModel.RuleEntry(
                rule.card().id(),
                rule.pack(),
                rule.level().word(),
                rule.card().title(),
                rule.card().sources(),
                rule.limits().values().stream().map(JsonShapes::limit).toList(),
                rule.off(),
                JsonAccepted.changes(rule));
    }

    private static JsonModel.LimitEntry limit(Limit limit) {
        return new JsonModel.LimitEntry(
                limit.name(),
                limit.kind().label(),
                limit.kind().siSymbol(),
                Numbers.of(limit.value()),
                Numbers.of(limit.named().standard()),
                limit.named().source(),
                limit.changedBy());
    }

    static JsonModel.Place place(Position p) {
        return new JsonModel.Place(p.file(), p.line(), p.column(), p.endLine(), p.endColumn());
    }

    private static JsonModel.ProblemEntry problem(Problem p) {
        return new JsonModel.ProblemEntry(
                p.kind().id(),
                place(p.position()),
                p.path(),
                p.found(),
                p.expected(),
                p.hint(),
                p.choices(),
                ProblemText.of(p));
    }

    private JsonModel.FindingEntry finding(Finding f) {
        Outcome o = f.outcome();
        return new JsonModel.FindingEntry(
                o.rule(),
                o.kind().word(),
                o.level().word(),
                o.path(),
                o.during(),
                place(f.position()),
                message(o.message(), wording.of(o)),
                compared(o.comparison()),
                o.missing(),
                f.waysOut().stream().map(way -> way(way, o)).toList(),
                f.rejected().isEmpty()
                        ? null
                        : f.rejected().stream()
                                .map(t -> new JsonModel.RejectedChangeEntry(way(t.way(), o), t.brings()))
                                .toList(),
                f.restsOn().stream()
                        .map(h -> new JsonModel.SensitivityEntry(
                                h.field(), h.atLow().word(), h.atHigh().word()))
                        .toList(),
                f.broke() ? Boolean.TRUE : null,
                f.endangers() ? Boolean.TRUE : null,
                f.suppressed() == null ? null : JsonAccepted.suppression(f.suppressed(), null, null),
                f.baseline() == null ? null : f.baseline().word());
    }

    private static JsonModel.MessageEntry message(Message message, String text) {
        Map<String, Object> arguments = new LinkedHashMap<>();
        for (Arg arg : message.args()) {
            arguments.put(arg.name(), argument(arg.value()));
        }
        return new JsonModel.MessageEntry(message.id(), arguments, text);
    }

    private static Object argument(Arg.Value value) {
        if (value instanceof Arg.Amount a) {
            Map<String, Object> amount = new LinkedHashMap<>();
            Object number = Numbers.of(a.si());
            if (number != null) {
                amount.put("value", number);
            }
            amount.put("quantity", a.kind().label());
            amount.put("unit", a.kind().siSymbol());
            return amount;
        }
        if (value instanceof Arg.Count c) {
            return c.number();
        }
        if (value instanceof Arg.Word w) {
            return w.text();
        }
        if (value instanceof Arg.Phrase p) {
            return p.key();
        }
        return ((Arg.Element) value).path();
    }

    private static JsonModel.@Nullable Compared compared(@Nullable Comparison c) {
        if (c == null) {
            return null;
        }
        return new JsonModel.Compared(
                Names.ofConstant(c.sense()),
                Numbers.of(c.value()),
                c.sense() == Comparison.Sense.AT_MOST ? null : Numbers.of(c.low()),
                c.sense() == Comparison.Sense.AT_LEAST ? null : Numbers.of(c.high()),
                Numbers.of(c.margin()),
                c.kind().label(),
                c.kind().siSymbol());
    }

    JsonModel.Way way(WayOut way, Outcome outcome) {
        return new JsonModel.Way(
                message(way.message(), wording.of(way, outcome)),
                way.edits().stream().map(JsonShapes::edit).toList(),
                way.gain().isEmpty() ? null : Numbers.of(way.gain().getAsDouble()),
                way.onHand().isEmpty()
                        ? null
                        : way.onHand().stream().map(Names::ofConstant).toList());
    }

    private static JsonModel.EditEntry edit(Edit edit) {
        return new JsonModel.EditEntry(edit.path(), written(edit.value()));
    }

    private static @Nullable String written(@Nullable Object value) {
        if (value == null) {
            return null;
        }
        if (value instanceof Quantity<?> q) {
            return QuantityText.print(q);
        }
        if (value instanceof Enum<?> word) {
            return Names.ofConstant(word);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(JsonShapes::written).toList().toString();
        }
        return value.toString();
    }

    private JsonModel.AssumptionEntry assumption(AssumedValue assumed) {
        var a = assumed.assumption();
        return new JsonModel.AssumptionEntry(
                a.path(),
                place(assumed.position()),
                a.kind().label(),
                a.kind().siSymbol(),
                Numbers.of(a.value()),
                Numbers.of(a.low()),
                Numbers.of(a.high()),
                wording.phrase(a.reason()),
                a.source(),
                assumed.turns().stream()
                        .map(t -> new JsonModel.Turn(t.rule(), t.path(), t.during()))
                        .toList());
    }

    private static JsonModel.OperatingEntry operating(Running r) {
        OperatingPoint o = r.operatingPoint();
        return new JsonModel.OperatingEntry(
                r.nozzles().name(),
                r.nozzles().asBuilt(),
                r.water().fullPipe(),
                Names.ofConstant(o.hold()),
                Numbers.of(r.water().flow()),
                Numbers.of(r.water().netHead()),
                Numbers.of(o.speed()),
                Numbers.of(o.speedRatio()),
                Numbers.of(o.bus().bridge()),
                Numbers.of(o.directCurrent()),
                Numbers.of(o.windingTemperature()),
                Numbers.of(o.batteryPower()),
                o.energy().entries().stream()
                        .map(e -> new JsonModel.StageEntry(
                                Names.ofConstant(e.stage()), Numbers.of(e.power()), Numbers.of(e.lost())))
                        .toList());
    }

    private static JsonModel.BusEntry bus(BusSituation s) {
        return new JsonModel.BusEntry(
                s.id(),
                s.nozzles().name(),
                Numbers.of(s.lastingVoltage()),
                Numbers.of(s.momentVoltage()),
                Numbers.of(s.batteryVoltage()),
                Numbers.of(s.runnerSpeed()),
                Names.ofConstant(s.holder()));
    }

    private static JsonModel.PressureEntry pressures(PressureProfile profile) {
        Amount.Unknown parts = profile.parts();
        return new JsonModel.PressureEntry(
                profile.highestDuring(),
                profile.lowestDuring(),
                profile.rejoined(),
                parts == null ? null : parts.reason(),
                profile.points().stream()
                        .map(p -> new JsonModel.PressurePoint(
                                p.at(),
                                Numbers.of(p.distance()),
                                Numbers.of(p.elevation()),
                                Numbers.of(p.standing()),
                                Numbers.of(p.running()),
                                Numbers.of(p.highest()),
                                Numbers.of(p.lowest()),
                                Numbers.of(p.ratingHot())))
                        .toList());
    }
}
