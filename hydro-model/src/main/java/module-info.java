/**
 * What a plant is made of, the file that says so, and the plant solved as one machine. The laws are there for the rules
 * of this project: they move as knowledge does, so nobody else sees their packages.
 */
module org.leat.model {
    requires transitive java.measure;
    requires com.fasterxml.jackson.databind;
    requires com.fasterxml.jackson.dataformat.csv;
    requires commons.math3;
    requires org.snakeyaml.engine;
    requires tech.units.indriya;
    // marks the builders that the build writes
    requires static transitive java.compiler;
    requires static io.soabase.recordbuilder.core;
    requires static transitive org.apiguardian.api;
    requires static transitive org.jspecify;

    exports org.leat.catalogue;
    exports org.leat.catalogue.rows;
    exports org.leat.design;
    exports org.leat.file;
    exports org.leat.law;
    exports org.leat.plant;
    exports org.leat.plant.cases;
    exports org.leat.plant.numbers;
    exports org.leat.plant.solved;
    exports org.leat.quantity;
    exports org.leat.readings;
    exports org.leat.season;
    exports org.leat.catalogue.tables to
            org.leat.rules;
    exports org.leat.electrics to
            org.leat.rules;
    exports org.leat.hydraulics to
            org.leat.rules;
    exports org.leat.plant.derive to
            org.leat.rules,
            org.leat.rules.command;
    exports org.leat.plant.duties to
            org.leat.rules;
    exports org.leat.plant.loads to
            org.leat.rules;
    exports org.leat.plant.solve to
            org.leat.rules;
    exports org.leat.turbine to
            org.leat.rules;
}
