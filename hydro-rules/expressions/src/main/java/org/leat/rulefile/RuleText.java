package org.leat.rulefile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.check.Level;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.ImpossibleValueException;
import org.leat.design.ImpossibleValueException.Fault;
import org.leat.design.Limits;
import org.leat.file.PlainValue;

/**
 * One rule as a file has it.
 *
 * @param id two parts
 * @param level of a failure
 * @param title what is judged
 * @param why what goes wrong
 * @param source where the rule is from
 * @param judged the case, in words
 * @param computed what is computed, in words
 * @param limits by name
 * @param at path of the element
 * @param forEach expression: a list
 * @param when expression: whether it applies
 * @param value expression: what is compared
 * @param atMost expression
 * @param atLeast expression
 * @param must expression: what must hold
 * @param show expressions by name
 * @param passes text of a pass
 * @param fails text of a failure
 */
@About("One rule")
record RuleText(
        @About("two parts, the first your own: hill/standing-pressure")
        String id,

        @About("how much a failure matters") Level level,

        @About("what is judged, in a few words") String title,

        @About("what goes wrong, in one to three sentences") String why,

        @About("standard and clause, handbook and page, or \"common practice\"; one or a list") @Limits(items = 1)
        List<String> source,

        @About("the case that is judged, in words") String judged,

        @About("what is computed, in words; the expressions themselves if left out") @CanBeAbsent @Nullable
        String computed,

        @About("limits that settings may change, read as limit.name in expressions")
        Map<String, LimitOfRule> limits,

        @About("path of the element answered for, as in /battery; the whole design if left out") @CanBeAbsent @Nullable
        String at,

        @About("expression: a list of things to judge one after the other, each read as each") @CanBeAbsent @Nullable
        PlainValue forEach,

        @About("expression: whether the rule applies") @CanBeAbsent @Nullable
        PlainValue when,

        @About("expression: a quantity that is compared") @CanBeAbsent @Nullable
        PlainValue value,

        @About("expression: the most that value may be") @CanBeAbsent @Nullable
        PlainValue atMost,

        @About("expression: the least that value may be") @CanBeAbsent @Nullable
        PlainValue atLeast,

        @About("expression: what must hold, where no value is compared") @CanBeAbsent @Nullable
        PlainValue must,

        @About("expressions by name, for placeholders of the texts")
        Map<String, PlainValue> show,

        @About("text of a pass, with placeholders as in {value}") @CanBeAbsent @Nullable
        String passes,

        @About("text of a failure, with placeholders as in {value}, {limit:bar} and {at}")
        String fails) {

    RuleText {
        source = List.copyOf(source);
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
        show = Collections.unmodifiableMap(new LinkedHashMap<>(show));
        List<Fault> faults = decides(value, atMost, atLeast, must);
        if (!faults.isEmpty()) {
            throw new ImpossibleValueException(faults);
        }
    }

    /**
     * A limit of a rule.
     *
     * @param value with its unit
     * @param source where it is from
     */
    @About("A limit that settings may change")
    record LimitOfRule(
            @About("with its unit, as in 4 bar; a plain number for a ratio")
            PlainValue value,

            @About("standard and clause, handbook and page, or \"common practice\"")
            String source) {}

    /** Either something must hold, or a value is compared with a limit. */
    private static List<Fault> decides(
            @Nullable PlainValue value,
            @Nullable PlainValue atMost,
            @Nullable PlainValue atLeast,
            @Nullable PlainValue must) {
        List<Fault> faults = new ArrayList<>();
        boolean limited = atMost != null || atLeast != null;
        if (must != null && value != null) {
            faults.add(new Fault("must", must.text(), "either must or value, not both"));
        } else if (must != null && limited) {
            faults.add(new Fault("value", "", "a value to compare with the limit"));
        } else if (must == null && value == null) {
            faults.add(new Fault("must", "", "either must, or value with at-most or at-least"));
        } else if (value != null && !limited) {
            faults.add(new Fault("atMost", "", "at-most or at-least beside value"));
        }
        return faults;
    }
}
