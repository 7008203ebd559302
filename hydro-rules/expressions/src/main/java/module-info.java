/**
 * Rules written in files. The expression engine is not asked for here: its jars share packages, so no module path can
 * hold them. They stay on the class path, which this module reads; see {@code RuleFile}.
 */
module org.leat.rules.expressions {
    requires transitive org.leat.rules;
    requires static transitive org.apiguardian.api;
    requires static transitive org.jspecify;

    exports org.leat.rulefile;

    // records of rule files are filled by the reader of all files
    opens org.leat.rulefile to
            org.leat.model;
}
