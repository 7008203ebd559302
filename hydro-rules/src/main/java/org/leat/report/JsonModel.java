package org.leat.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The shape of the JSON report, version 1. All numbers in SI units; absent where there is none or it is unlimited. */
final class JsonModel {

    /** The version of this shape; raised when a field changes its meaning or goes. */
    static final int VERSION = 1;

    /** What the document says it is. */
    static final String FORMAT = "leat-report";

    private JsonModel() {}

    record Place(String file, int line, int column, int endLine, int endColumn) {}

    record ProblemEntry(
            String kind,
            Place at,
            String path,
            String found,
            String expected,
            String hint,
            List<String> choices,
            String text) {}

    record Compared(
            String sense,
            @Nullable BigDecimal value,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            @Nullable BigDecimal margin,
            String quantity,
            String unit) {}

    record MessageEntry(String id, Map<String, Object> arguments, String text) {}

    record EditEntry(String path, @Nullable String value) {}

    record Way(
            MessageEntry message,
            List<EditEntry> edits,
            @Nullable BigDecimal gain,
            @Nullable List<String> onHand) {}

    /** A way out that makes another rule fail as badly. */
    record RejectedChangeEntry(Way way, String brings) {}

    record SensitivityEntry(String field, String atLow, String atHigh) {}

    record FindingEntry(
            String rule,
            String kind,
            String level,
            String path,
            String during,
            Place at,
            MessageEntry message,
            @Nullable Compared comparison,
            @Nullable String missing,
            List<Way> waysOut,
            @Nullable List<RejectedChangeEntry> triedInVain,
            List<SensitivityEntry> restsOn,
            @Nullable Boolean broke,
            @Nullable Boolean endangers,
            @Nullable SuppressionEntry suppressed,
            @Nullable String baselineState) {}

    /** Who says that a finding does not count; where it suppresses nothing, why. */
    record SuppressionEntry(
            String rule,
            String path,
            @Nullable String during,
            String reason,
            @Nullable String until,
            @Nullable String by,
            @Nullable Boolean dangerAccepted,
            boolean inDesign,
            Place at,
            @Nullable String idle,
            @Nullable String text) {}

    record AbsentEntry(String rule, String path, String during, String kind, String level, String text) {}

    /** What settings change of a rule, and on what grounds. */
    record ChangeEntry(
            String what,
            String setTo,
            String setBy,
            String reason,
            @Nullable String by,
            @Nullable Boolean dangerAccepted) {}

    record AssumptionEntry(
            String path,
            Place at,
            String quantity,
            String unit,
            @Nullable BigDecimal value,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            String reason,
            String source,
            List<Turn> turns) {}

    record Turn(String rule, String path, String during) {}

    record OperatingEntry(
            String nozzles,
            boolean asBuilt,
            boolean fullPipe,
            String hold,
            @Nullable BigDecimal flow,
            @Nullable BigDecimal netHead,
            @Nullable BigDecimal speed,
            @Nullable BigDecimal speedRatio,
            @Nullable BigDecimal busVoltage,
            @Nullable BigDecimal directCurrent,
            @Nullable BigDecimal windingTemperature,
            @Nullable BigDecimal batteryPower,
            List<StageEntry> energy) {}

    /** Behind the bridge in one case: V, V for a moment (absent where not known), V at the battery's node, rad/s of the runner. */
    record BusEntry(
            String during,
            String nozzles,
            @Nullable BigDecimal lastingVoltage,
            @Nullable BigDecimal momentVoltage,
            @Nullable BigDecimal batteryVoltage,
            @Nullable BigDecimal runnerSpeed,
            String heldBy) {}

    /** Pressures along the pipe, nozzles as built: distance and elevation in m, pressures above atmosphere in Pa. */
    record PressureEntry(
            @Nullable String highestDuring,
            @Nullable String lowestDuring,
            boolean columnRejoins,
            @Nullable String notTheLastWord,
            List<PressurePoint> points) {}

    record PressurePoint(
            String at,
            @Nullable BigDecimal distance,
            @Nullable BigDecimal elevation,
            @Nullable BigDecimal standing,
            @Nullable BigDecimal running,
            @Nullable BigDecimal highest,
            @Nullable BigDecimal lowest,
            @Nullable BigDecimal ratingHot) {}

    /** Power in W that arrives at a stage of one nozzle set, and what was lost on the way to it. */
    record StageEntry(
            String stage,
            @Nullable BigDecimal power,
            @Nullable BigDecimal lost) {}

    record DesignEntry(
            String file,
            String design,
            @Nullable String alternative,
            boolean readable,
            @Nullable List<String> judgedOn,
            List<ProblemEntry> problems,
            List<FindingEntry> findings,
            List<AssumptionEntry> assumptions,
            List<String> unsolvedWithout,
            String regulator,
            List<OperatingEntry> operating,
            List<BusEntry> bus,
            @Nullable PressureEntry pressures,
            List<DesignEntry> alternatives,
            @Nullable List<SuppressionEntry> idleSuppressions,
            @Nullable List<AbsentEntry> absent,
            @Nullable String comparedWithDay,
            @Nullable OverviewEntry overview,
            @Nullable SurenessEntry howSure) {}

    /** How sure the verdicts are, only where it was asked for: shares, 0 to 1; how many plants were sampled. */
    record SurenessEntry(
            int plantsSampled,
            @Nullable BigDecimal anyErrorFails,
            @Nullable BigDecimal orUndecided,
            List<VariedEntry> inputs,
            List<SureEntry> verdicts) {}

    record VariedEntry(
            String path,
            String origin,
            String quantity,
            String unit,
            @Nullable BigDecimal value,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            @Nullable BigDecimal standardUncertainty) {}

    /** Failing: probability of it, by slopes or sampled; undecided: share of the plants in which it could not be judged. */
    record SureEntry(
            String rule,
            String path,
            String during,
            String kind,
            String basis,
            @Nullable BigDecimal standardUncertainty,
            @Nullable BigDecimal failing,
            @Nullable BigDecimal undecided,
            List<ShareEntry> shares) {}

    record ShareEntry(
            String path,
            @Nullable BigDecimal contribution,
            @Nullable BigDecimal share) {}

    /** The design at a glance; only where it was asked for. */
    record OverviewEntry(
            VerdictEntry verdict,
            List<YieldEntry> yields,
            List<CauseEntry> causes,
            PlanEntry plan,
            List<InputEntry> inputs,
            List<UnderstoodEntry> understood) {}

    record VerdictEntry(
            String answer,
            long errors,
            long warnings,
            long warningsOfSafety,
            long notes,
            long openOfSafety,
            long open,
            long review,
            long setAside,
            long doubted,
            long playedDown,
            String text) {}

    /** What one nozzle set gives: W, J a day, A, V at the battery. */
    record YieldEntry(
            String nozzles,
            boolean asBuilt,
            boolean fullPipe,
            boolean held,
            @Nullable BigDecimal batteryPower,
            @Nullable BigDecimal energyPerDay,
            @Nullable BigDecimal current,
            @Nullable BigDecimal voltage) {}

    /** One rule at one element over all cases. */
    record GroupEntry(String rule, String path, String level, String worstDuring, List<String> alsoDuring) {}

    record CauseEntry(
            @Nullable Way change,
            boolean tried,
            boolean inPlan,
            List<GroupEntry> clears,
            List<GroupEntry> leavesNoErrorOf,
            int alsoClears) {}

    record StayingEntry(GroupEntry failure, String why) {}

    record PlanEntry(
            String result,
            List<Way> changes,
            List<StayingEntry> stays,
            long openOfSafety,
            @Nullable BigDecimal batteryPower,
            int tried,
            int budget) {}

    record QuestionEntry(String rule, String path, String during) {}

    record InputEntry(String path, boolean assumed, String how, long ofSafety, List<QuestionEntry> settles) {}

    record UnderstoodEntry(
            String what,
            String path,
            String of,
            @Nullable BigDecimal value,
            String quantity,
            String unit,
            boolean assumed) {}

    record LimitEntry(
            String name,
            String quantity,
            String unit,
            @Nullable BigDecimal value,
            @Nullable BigDecimal standard,
            String source,
            @Nullable String changedBy) {}

    record RuleEntry(
            String id,
            String pack,
            String level,
            String title,
            List<String> sources,
            List<LimitEntry> limits,
            @Nullable String off,
            @Nullable List<ChangeEntry> changes) {}

    record BrokenEntry(String file, String cause) {}

    record Summary(
            int files,
            int unreadable,
            long errors,
            long warnings,
            long notes,
            long passed,
            long open,
            long review,
            long informational,
            long notApplicable,
            long suppressed,
            long idleSuppressions,
            long knownFromBaseline,
            long absent,
            boolean broke) {}

    /** The document, which is written part by part; first what settings loosen of what protects people, in sentences. */
    record Document(
            String format,
            int version,
            List<String> loosened,
            List<RuleEntry> rules,
            List<DesignEntry> designs,
            List<BrokenEntry> notChecked,
            Summary summary) {}
}
