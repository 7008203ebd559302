/** What the tests of a rule's author need. */
module org.leat.rules.testkit {
    requires transitive org.leat.rules;
    requires org.snakeyaml.engine;
    requires static transitive org.apiguardian.api;
    requires static transitive org.jspecify;

    exports org.leat.check.testing;
}
