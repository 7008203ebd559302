package org.leat.rulefile;

import java.util.List;
import org.leat.design.About;
import org.leat.design.Limits;

/**
 * What a rule file says.
 *
 * @param format version of the file format
 * @param name of the pack
 * @param rules at least one
 */
@About("Rules of the checker, written without Java")
record FileOfRules(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("what the pack is called") String name,

        @About("the rules, " + FileOfRules.MOST + " at most") @Limits(items = 1)
        List<RuleText> rules) {

    static final int MOST = 200;

    FileOfRules {
        rules = List.copyOf(rules);
    }
}
