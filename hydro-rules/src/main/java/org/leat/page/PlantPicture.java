package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.page.PlantParts.Line;
import org.leat.page.PlantParts.Part;
import org.leat.plant.Plant;

/** The plant as a schematic from the stream at the top to the sockets at the foot, with its numbers on it. */
final class PlantPicture {

    private static final double SPINE = 30;
    private static final double HANGING = 78;
    private static final double TOP = 10;

    /** Of a letter, on average, at the size that a phone gets. */
    private static final double ACROSS = 6.3;

    private final List<Part> parts;
    private final List<Finding> failures;

    private PlantPicture(List<Part> parts, List<Finding> failures) {
        this.parts = parts;
        this.failures = failures;
    }

    static Figure of(Report report, Plant plant) {
        PlantPicture picture = new PlantPicture(PlantParts.of(report, plant), report.worstFirst(Kind.FAIL));
        return new Figure(
                Topic.PLANT,
                "Water comes in at the top, power leaves at the foot. A part in a dashed frame has a failing rule, which stands"
                        + " beside the picture that it belongs to. Numbers are those of the plant running as built.",
                picture::draw,
                List.of(picture.table()));
    }

    private static double height(Part part) {
        return part.symbol() == Symbols.CABLE
                ? 32
                : 30 + 14 * Math.max(1, part.numbers().size());
    }

    private void draw(Markup page) {
        double height = TOP + 6;
        for (Part part : parts) {
            height += height(part);
        }
        Drawing on = Drawing.begin(page, Topic.PLANT.id(), "The plant from stream to socket", height);
        double y = TOP;
        double before = 0;
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            double middle = y + height(part) / 2;
            boolean last = parts.subList(i + 1, parts.size()).stream().allMatch(Part::branch);
            if (before > 0) {
                String look = part.line() == Line.WATER ? "pipe-line" : part.line() == Line.SHAFT ? "shaft" : "wire";
                on.line(SPINE, before, SPINE, last ? middle : y + height(part), look);
                strokes(on, part.line(), y + 1);
            }
            before = last ? middle : y + height(part);
            if (part.branch()) {
                on.line(SPINE, middle, HANGING, middle, "wire");
                on.circle(SPINE, middle, 2.5, "joint");
            } else if (i == 0) {
                on.line(SPINE, middle + 12, SPINE, before, "pipe-line");
            }
            part(on, part, middle);
            y += height(part);
        }
        on.end();
        new Legend()
                .line("ring-bad", "an error or a warning is about this part")
                .write(page);
    }

    private static void strokes(Drawing on, Line line, double y) {
        if (line == Line.THREE_PHASE) {
            for (double d : new double[] {-4, 0, 4}) {
                on.line(SPINE - 4, y + d + 3, SPINE + 4, y + d - 1, "wire");
            }
        }
    }

    private void part(Drawing on, Part part, double middle) {
        double x = part.branch() ? HANGING : SPINE;
        on.group("class", "part");
        if (part.symbol() != Symbols.CABLE) {
            part.symbol().draw(on, x, middle);
        }
        String count = told(part);
        if (worst(part) != null && worst(part) != Level.NOTE) {
            double half = part.symbol() == Symbols.CABLE ? 10 : 22;
            on.rectangle(x - 23, middle - half, 46, 2 * half, "ring-bad");
        }
        double left = x + 30;
        double line = middle - 7 * part.numbers().size() + (part.symbol() == Symbols.CABLE ? 11 : 4);
        int room = (int) ((Drawing.WIDTH - left) / ACROSS);
        if (part.symbol() == Symbols.CABLE) {
            String said = String.join(", ", part.numbers()) + ", " + part.name();
            on.text(left, line, Drawing.shortened(said, room - count.length()), "label-soft");
        } else {
            on.text(left, line, Drawing.shortened(part.name(), room - count.length() - 2), "axis-name");
            for (String number : part.numbers()) {
                line += 14;
                on.text(left, line, Drawing.shortened(number, room), "label");
            }
        }
        if (!count.isEmpty()) {
            double at = part.symbol() == Symbols.CABLE
                    ? line
                    : middle - 7 * part.numbers().size() + 4;
            on.text(Drawing.WIDTH - 4, at, count, worst(part) == Level.NOTE ? "label-soft end" : "label-bad end");
        }
        on.endGroup();
    }

    private List<Finding> about(Part part) {
        return failures.stream().filter(f -> part.holds(f.outcome().path())).toList();
    }

    private @Nullable Level worst(Part part) {
        return about(part).stream()
                .map(f -> f.outcome().level())
                .max(Level::compareTo)
                .orElse(null);
    }

    /** {@return how many findings are about a part, by level; "" for none} */
    private String told(Part part) {
        List<String> told = new ArrayList<>();
        for (Level level : List.of(Level.ERROR, Level.WARNING, Level.NOTE)) {
            long count = about(part).stream()
                    .filter(f -> f.outcome().level() == level)
                    .count();
            if (count > 0) {
                told.add(count + " " + level.word() + (count == 1 ? "" : "s"));
            }
        }
        return String.join(", ", told);
    }

    private DataTable table() {
        DataTable table = new DataTable("The plant, part by part", "part", "numbers", "findings");
        for (Part part : parts) {
            table.row(part.name(), String.join("; ", part.numbers()), told(part));
        }
        return table;
    }
}
