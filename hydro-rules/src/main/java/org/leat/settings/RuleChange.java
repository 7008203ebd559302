package org.leat.settings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.check.Level;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.DangerWord;
import org.leat.file.PlainValue;

/**
 * What one settings file says about one rule.
 *
 * @param limits changed limits by name, each with its unit
 * @param level of the rule's ordinary failure
 * @param off whether the rule does not run
 * @param reason why
 * @param by name of the person who answers for it
 * @param danger beside the name
 */
@About("What is changed of one rule, and why")
record RuleChange(
        @About("changed limits by name, each with its unit") Map<String, PlainValue> limits,

        @About("level of the rule's ordinary failure; its worse and milder cases move by as many steps")
        @CanBeAbsent
        @Nullable
        Level level,

        @About("whether the rule does not run; false switches it on again") @CanBeAbsent @Nullable
        Boolean off,

        @About("why") String reason,

        @About("name of the person who answers for it; needed to hide or play down errors that can hurt someone")
        @CanBeAbsent
        @Nullable
        String by,

        @About("needed beside the name to hide or play down errors that can hurt someone") @CanBeAbsent @Nullable
        DangerWord danger) {

    public RuleChange {
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    }
}
