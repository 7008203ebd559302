package org.leat.report;

import org.jspecify.annotations.Nullable;
import org.leat.check.Finding;
import org.leat.check.Outcome;
import org.leat.choice.Cause;
import org.leat.choice.MissingInput;
import org.leat.choice.Overview;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.choice.Overview.UnderstoodNumber;
import org.leat.choice.Overview.Yield;
import org.leat.choice.Plan;
import org.leat.choice.Plan.Step;
import org.leat.choice.SafetyVerdict;
import org.leat.file.Names;

/** A design at a glance, in the shapes of {@link JsonModel}. */
final class JsonOverview {

    private final JsonShapes shapes;

    JsonOverview(JsonShapes shapes) {
        this.shapes = shapes;
    }

    JsonModel.OverviewEntry of(Overview o) {
        return new JsonModel.OverviewEntry(
                verdict(o.verdict()),
                o.yields().stream().map(JsonOverview::yieldOf).toList(),
                o.causes().stream().map(this::cause).toList(),
                plan(o.plan()),
                o.inputs().stream().map(JsonOverview::input).toList(),
                o.understood().stream().map(JsonOverview::understood).toList());
    }

    private static JsonModel.VerdictEntry verdict(SafetyVerdict v) {
        return new JsonModel.VerdictEntry(
                Names.ofConstant(v.answer()),
                v.errors(),
                v.warnings(),
                v.warningsEndangering(),
                v.notes(),
                v.openEndangering(),
                v.open(),
                v.review(),
                v.setAside(),
                v.doubted(),
                v.playedDown(),
                OverviewText.verdict(v));
    }

    private static JsonModel.YieldEntry yieldOf(Yield y) {
        return new JsonModel.YieldEntry(
                y.nozzles(),
                y.asBuilt(),
                y.fullPipe(),
                y.held(),
                Numbers.of(y.batteryPower()),
                Numbers.of(y.energyPerDay()),
                Numbers.of(y.current()),
                Numbers.of(y.voltage()));
    }

    private JsonModel.CauseEntry cause(Cause c) {
        return new JsonModel.CauseEntry(
                way(c.change()),
                c.isTried(),
                c.inPlan(),
                c.clears().stream().map(JsonOverview::group).toList(),
                c.calms().stream().map(JsonOverview::group).toList(),
                c.alsoClears());
    }

    private JsonModel.@Nullable Way way(@Nullable Step step) {
        return step == null ? null : shapes.way(step.way(), step.of());
    }

    private static JsonModel.GroupEntry group(GroupedFailure g) {
        Outcome worst = g.worst().outcome();
        return new JsonModel.GroupEntry(
                worst.rule(),
                worst.path(),
                worst.level().word(),
                worst.during(),
                g.others().stream().map(Finding::outcome).map(Outcome::during).toList());
    }

    private JsonModel.PlanEntry plan(Plan p) {
        return new JsonModel.PlanEntry(
                Names.ofConstant(p.result()),
                p.steps().stream().map(s -> shapes.way(s.way(), s.of())).toList(),
                p.stays().stream()
                        .map(s -> new JsonModel.StayingEntry(group(s.failure()), Names.ofConstant(s.why())))
                        .toList(),
                p.openAfter(),
                p.batteryPower().isEmpty() ? null : Numbers.of(p.batteryPower().getAsDouble()),
                p.tried(),
                p.budget());
    }

    private static JsonModel.InputEntry input(MissingInput i) {
        return new JsonModel.InputEntry(
                i.field(),
                i.assumed(),
                i.how().sentence(),
                i.endangering(),
                i.settles().stream()
                        .map(Finding::outcome)
                        .map(q -> new JsonModel.QuestionEntry(q.rule(), q.path(), q.during()))
                        .toList());
    }

    private static JsonModel.UnderstoodEntry understood(UnderstoodNumber n) {
        return new JsonModel.UnderstoodEntry(
                Names.ofConstant(n.what()),
                n.element(),
                n.of(),
                Numbers.of(n.value()),
                n.kind().label(),
                n.kind().siSymbol(),
                n.assumed());
    }
}
