/** The checker: rules, the built-in pack, settings files, and reports in several formats. */
module org.leat.rules {
    requires transitive org.leat.model;
    requires com.fasterxml.jackson.databind;
    requires commons.math3;
    requires java.xml;
    requires org.snakeyaml.engine;
    requires tech.units.indriya;
    requires static transitive org.apiguardian.api;
    requires static transitive org.jspecify;

    exports org.leat.check;
    exports org.leat.choice;
    exports org.leat.pack;
    exports org.leat.page;
    exports org.leat.prices;
    exports org.leat.report;
    exports org.leat.settings;
    exports org.leat.sure;

    // records of settings files, surveys, price lists and usual parts are filled by the reader of all files
    opens org.leat.choice to
            org.leat.model;
    opens org.leat.settings to
            org.leat.model;
    opens org.leat.prices to
            org.leat.model;

    // reports are written from records
    opens org.leat.report to
            com.fasterxml.jackson.databind;

    exports org.leat.report.mending to
            org.leat.rules.command;

    uses org.leat.check.RulePack;
}
