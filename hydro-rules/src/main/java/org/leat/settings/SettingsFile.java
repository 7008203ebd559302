package org.leat.settings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.check.Level;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Limits;

/**
 * What one settings file says.
 *
 * @param format version of the file format
 * @param notes free words for whoever reads the file next
 * @param buildsOn settings files this one builds on
 * @param packs rule packs beside the built-in rules
 * @param failOn least level that makes a run fail
 * @param rules what is changed, by rule id
 * @param suppressions findings that do not count by someone's word
 */
@About("Settings of the checker: what a country, a firm or a project changes")
record SettingsFile(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("free words for whoever reads the file next") @CanBeAbsent @Nullable
        String notes,

        @About("settings files this one builds on, relative to it; this one wins, and of the list the later")
        List<String> buildsOn,

        @About(
                "rule packs beside the built-in rules: a jar or a file of expression rules, relative to this file, or the"
                        + " name of a pack on the class path")
        List<String> packs,

        @About("least level that makes a run fail; error if no file says") @CanBeAbsent @Nullable
        Level failOn,

        @About("what is changed, by rule id") Map<String, RuleChange> rules,

        @About("findings that do not count by someone's word")
        List<FindingOfDesign> suppressions) {

    public SettingsFile {
        buildsOn = List.copyOf(buildsOn);
        packs = List.copyOf(packs);
        rules = Collections.unmodifiableMap(new LinkedHashMap<>(rules));
        suppressions = List.copyOf(suppressions);
    }
}
