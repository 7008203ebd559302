package org.leat.expression;

import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.leat.design.Design;
import org.leat.plant.Plant;

/** Every name that an expression can begin with. */
final class Vocabulary {

    private final Map<String, Name> names = new LinkedHashMap<>();
    private final Map<String, Struct> structs = new TreeMap<>();

    Vocabulary() {
        one("site", PlantWords.SITE, p -> new View(PlantWords.SITE, p.numbers().site(), "/site", ""));
        one("penstock", PlantWords.PENSTOCK, p -> new View(PlantWords.PENSTOCK, p, "/penstock", ""));
        one(
                "runner",
                PlantWords.RUNNER,
                p -> new View(PlantWords.RUNNER, p.numbers().runner(), "/runner", ""));
        one(
                "alternator",
                PlantWords.ALTERNATOR,
                p -> new View(PlantWords.ALTERNATOR, p.numbers().alternator(), "/alternator", ""));
        one(
                "battery",
                PlantWords.BATTERY,
                p -> new View(PlantWords.BATTERY, p.numbers().battery(), "/battery", ""));
        many(
                "running",
                PlantWords.RUNNING,
                "running on each nozzle set, the set open as built first",
                p -> PlantWords.views(p, PlantWords.RUNNING, q -> q.solve().running()));
        many(
                "overTheYear",
                PlantWords.RUNNING,
                "running at each flow of the stream, most water first",
                p -> PlantWords.views(p, PlantWords.RUNNING, q -> q.solve().overTheYear()));
        many(
                "loadLost",
                PlantWords.LOAD_LOST,
                "load lost on each nozzle set",
                p -> PlantWords.views(p, PlantWords.LOAD_LOST, q -> q.solve().loadLost()));
        many(
                "batteryFull",
                PlantWords.BATTERY_FULL,
                "battery full on each nozzle set",
                p -> PlantWords.views(p, PlantWords.BATTERY_FULL, q -> q.solve().batteryFull()));
        many(
                "stops",
                PlantWords.STOP,
                "the flow stopped, for each nozzle set and each thing that can stop it",
                p -> PlantWords.views(p, PlantWords.STOP, q -> q.solve().closing()));
        structs.put(PlantWords.SECTION.name(), PlantWords.SECTION);
        DesignStructs design = new DesignStructs();
        Struct root = design.of(Design.class);
        one("design", root, p -> new View(root, p.design(), "/", ""));
        design.all().forEach(s -> structs.put(s.name(), s));
    }

    /**
     * One name.
     *
     * @param meaning in a few words
     * @param read from the plant
     */
    record Name(CelType type, Struct struct, String meaning, Function<Plant, Object> read) {}

    private void one(String name, Struct struct, Function<Plant, Object> read) {
        structs.put(struct.name(), struct);
        names.put(name, new Name(struct.type(), struct, struct.meaning(), read));
    }

    private void many(String name, Struct struct, String meaning, Function<Plant, Object> read) {
        structs.put(struct.name(), struct);
        names.put(name, new Name(ListType.create(struct.type()), struct, meaning, read));
    }

    Map<String, Name> names() {
        return Collections.unmodifiableMap(names);
    }

    /** {@return the names of the fields of all things} */
    List<String> fields() {
        return structs.values().stream()
                .flatMap(struct -> struct.fields().stream())
                .map(Struct.Field::name)
                .distinct()
                .toList();
    }

    /** {@return every type of thing, by name} */
    List<Struct> structs() {
        return new ArrayList<>(structs.values());
    }
}
