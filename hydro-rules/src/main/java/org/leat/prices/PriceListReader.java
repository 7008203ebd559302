package org.leat.prices;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.OnHand;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.ImpossibleValueException;
import org.leat.design.NozzleSet;
import org.leat.file.AnyValue;
import org.leat.file.Filled;
import org.leat.file.Names;
import org.leat.file.Position;
import org.leat.file.Positions;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;
import org.leat.quantity.Si;

/** Takes a price list at its word for one design. */
final class PriceListReader {

    private static final String NOZZLES = "/nozzles";

    /** Bores that differ by less are one, m. */
    private static final double SAME = 1e-6;

    private final Positions positions;
    private final Design design;
    private final List<Problem> problems = new ArrayList<>();

    /** Fields that choices vary so far, with where each stands. */
    private final Map<String, Position> varied = new LinkedHashMap<>();

    private PriceListReader(Positions positions, Design design) {
        this.positions = positions;
        this.design = design;
    }

    static PriceList.Read of(Filled<PriceFile> filled, Design design) {
        PriceFile file = filled.record();
        if (file == null) {
            return new PriceList.Read(null, filled.problems());
        }
        PriceListReader reader = new PriceListReader(filled.positions(), design);
        PriceList list = reader.list(file);
        List<Problem> problems = reader.problems.stream().distinct().sorted().toList();
        return new PriceList.Read(problems.isEmpty() ? list : null, problems);
    }

    private PriceList list(PriceFile file) {
        List<PriceList.Choice> choices = new ArrayList<>();
        List<String> names = new ArrayList<>();
        long sets = 1;
        for (int i = 0; i < file.choices().size(); i++) {
            PriceFile.Entry entry = file.choices().get(i);
            String path = item("/choices", names, entry.name());
            choices.add(choice(entry, path));
            sets = sets > PriceList.MOST_SETS ? sets : sets * entry.parts().size();
        }
        if (sets > PriceList.MOST_SETS) {
            problem(
                    ProblemKind.TOO_MANY_VALUES,
                    positions.of("/choices"),
                    "/choices",
                    "more than " + PriceList.MOST_SETS + " sets",
                    "at most " + PriceList.MOST_SETS + " sets of parts");
        }
        return new PriceList(file.currency(), choices);
    }

    /** The path of a list's next item; a name that is there already is told. */
    private String item(String list, List<String> names, String name) {
        boolean again = names.contains(name);
        String path = ElementPath.named(list, again ? null : name, names.size());
        if (again) {
            String first = ElementPath.named(list, name, 0) + "/name";
            problems.add(new Problem(
                    ProblemKind.DUPLICATE_FIELD,
                    positions.of(path + "/name"),
                    path + "/name",
                    name,
                    "each name once",
                    Integer.toString(positions.of(first).line()),
                    List.of()));
        }
        names.add(name);
        return path;
    }

    private PriceList.Choice choice(PriceFile.Entry entry, String path) {
        Map<String, String> paths = new LinkedHashMap<>();
        Map<String, DesignEdits.Place> places = new LinkedHashMap<>();
        for (int i = 0; i < entry.fields().size(); i++) {
            String field = entry.fields().get(i);
            String at = ElementPath.named(path + "/fields", null, i);
            String there = entry.at().equals(ElementPath.ROOT) ? "/" + field : entry.at() + "/" + field;
            DesignEdits.Place place = place(entry, there, path, at);
            if (place != null && isFree(there, at)) {
                paths.put(field, there);
                places.put(field, place);
            }
        }
        if (paths.size() < entry.fields().size()) {
            return new PriceList.Choice(entry.name(), List.copyOf(paths.values()), List.of());
        }
        List<PriceList.Part> parts = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (PriceFile.Priced priced : entry.parts()) {
            PriceList.Part part = part(priced, item(path + "/parts", names, priced.name()), paths, places);
            if (part != null) {
                parts.add(part);
            }
        }
        return new PriceList.Choice(entry.name(), List.copyOf(paths.values()), parts);
    }

    /** The field that may vary, or null after a problem: at the element if that is not there, else at the field. */
    private DesignEdits.@Nullable Place place(PriceFile.Entry entry, String there, String path, String at) {
        boolean whole = entry.at().equals(ElementPath.ROOT);
        try {
            Record element = whole ? null : DesignEdits.find(design, entry.at());
            if (element instanceof DesignEdits.Nowhere nowhere) {
                nowhere(path + "/at", nowhere, entry.at());
                return null;
            }
        } catch (IllegalArgumentException e) {
            problem(
                    ProblemKind.UNKNOWN_FIELD,
                    positions.of(path + "/at"),
                    path + "/at",
                    entry.at(),
                    "the element as a report shows it, as /penstock/sections[run]/pipe");
            return null;
        }
        try {
            Record field = DesignEdits.find(design, there);
            if (field instanceof DesignEdits.Place place) {
                return place;
            }
            nowhere(at, (DesignEdits.Nowhere) field, there);
        } catch (IllegalArgumentException e) {
            problem(
                    ProblemKind.UNKNOWN_FIELD,
                    positions.of(at),
                    at,
                    there,
                    "the field as outside-diameter, or conductor/area below another field");
        }
        return null;
    }

    private void nowhere(String path, DesignEdits.Nowhere nowhere, String asked) {
        boolean absent = nowhere.known().isEmpty();
        problems.add(new Problem(
                ProblemKind.UNKNOWN_FIELD,
                positions.of(path),
                path,
                absent ? asked : nowhere.name(),
                absent ? "a choice of the whole of " + nowhere.name() + ": the design states none" : "",
                Names.nearest(nowhere.name(), nowhere.known()),
                nowhere.known()));
    }

    /** Whether no other choice varies the field, one above it or one below it, and it is none of what is on hand. */
    private boolean isFree(String there, String at) {
        Position here = positions.of(at);
        for (Map.Entry<String, Position> other : varied.entrySet()) {
            if (covers(other.getKey(), there) || covers(there, other.getKey())) {
                problems.add(new Problem(
                        ProblemKind.DUPLICATE_FIELD,
                        here,
                        at,
                        there,
                        "each field once",
                        Integer.toString(other.getValue().line()),
                        List.of()));
                return false;
            }
        }
        varied.put(there, here);
        List<?> onHand = OnHand.changedBy(List.of(new Edit(there, null)), design);
        if (!onHand.isEmpty()) {
            problem(
                    ProblemKind.CONTRADICTION,
                    here,
                    at,
                    there,
                    "a field of a part that the design does not list as on-hand");
            return false;
        }
        return true;
    }

    private static boolean covers(String outer, String inner) {
        return inner.startsWith(outer)
                && (inner.length() == outer.length()
                        || inner.charAt(outer.length()) == '/'
                        || inner.charAt(outer.length()) == '[');
    }

    private PriceList.@Nullable Part part(
            PriceFile.Priced priced, String path, Map<String, String> paths, Map<String, DesignEdits.Place> places) {
        List<Edit> edits = new ArrayList<>();
        int before = problems.size();
        Set<String> given = new LinkedHashSet<>(priced.sets().keySet());
        for (String stranger : given) {
            if (!paths.containsKey(stranger)) {
                String at = ElementPath.named(path + "/sets", stranger, 0);
                List<String> known = List.copyOf(paths.keySet());
                Position key = positions.exactly(at + "/");
                problems.add(new Problem(
                        ProblemKind.UNKNOWN_FIELD,
                        key == null ? positions.of(at) : key,
                        at,
                        stranger,
                        "",
                        Names.nearest(stranger, known),
                        known));
            }
        }
        paths.forEach((field, there) -> {
            String at = ElementPath.named(path + "/sets", field, 0);
            AnyValue value = priced.sets().get(field);
            if (value == null) {
                problem(
                        ProblemKind.MISSING_FIELD,
                        positions.of(path + "/sets"),
                        at,
                        "",
                        "what " + there + " becomes, as every part of this choice says");
                return;
            }
            DesignEdits.Place place = places.get(field);
            if (place != null) {
                AnyValue.Taken taken = value.as(place.record(), place.field(), place.item(), at);
                problems.addAll(taken.problems());
                edits.add(new Edit(there, taken.value()));
            }
        });
        if (problems.size() > before) {
            return null;
        }
        return fitted(priced, path, edits);
    }

    private PriceList.@Nullable Part fitted(PriceFile.Priced priced, String path, List<Edit> edits) {
        String sets = path + "/sets";
        try {
            Design fitted = DesignEdits.apply(design, edits);
            if (lacksNozzles(edits, fitted.nozzles(), priced.name(), sets)) {
                return null;
            }
            boolean asDesigned = fitted.equals(design);
            return new PriceList.Part(priced.name(), BigDecimal.valueOf(priced.price()), edits, asDesigned);
        } catch (ImpossibleValueException e) {
            for (ImpossibleValueException.Fault fault : e.faults()) {
                problem(
                        ProblemKind.IMPOSSIBLE_VALUE,
                        positions.of(sets),
                        sets,
                        Names.ofComponent(fault.field()) + " " + fault.found(),
                        fault.expected());
            }
        } catch (IllegalArgumentException e) {
            problem(ProblemKind.CONTRADICTION, positions.of(sets), sets, priced.name(), "a part that fits there");
        }
        return null;
    }

    /** Whether sets of nozzles are stated that the part has not: their water would be counted and never bought. */
    private boolean lacksNozzles(List<Edit> edits, NozzleSet nozzles, String name, String path) {
        if (edits.stream().noneMatch(edit -> covers(NOZZLES, edit.path()))) {
            return false;
        }
        List<Quantity<Length>> lacking = nozzles.sets().stream()
                .flatMap(set -> set.open().stream())
                .filter(bore -> Stream.concat(nozzles.open().stream(), nozzles.available().stream())
                        .noneMatch(had -> Math.abs(Si.of(had) - Si.of(bore)) < SAME))
                .distinct()
                .toList();
        if (lacking.isEmpty()) {
            return false;
        }
        String bores = lacking.stream().map(Object::toString).collect(Collectors.joining(", "));
        problem(
                ProblemKind.CONTRADICTION,
                positions.of(path),
                path,
                name + " without the nozzle of " + bores + " that " + NOZZLES + "/sets opens",
                "a choice that sets the field sets too, to what each part can open, or parts that have these nozzles");
        return true;
    }

    private void problem(ProblemKind kind, Position at, String path, String found, String expected) {
        problems.add(new Problem(kind, at, path, found, expected, "", List.of()));
    }
}
