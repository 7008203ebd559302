package org.leat.route;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Section;
import org.leat.file.DesignEdit;
import org.leat.file.DesignReader;
import org.leat.file.Position;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.quantity.Si;

/**
 * One section of a penstock laid along a track: as many sections of the same pipe as the track has stretches. The shape is the
 * track's; where it begins and ends is the design's, so that the head stays what was measured.
 */
public final class Route {

    private final Reading design;
    private final Section section;
    private final String path;
    private final List<Stretch> stretches;

    /**
     * A stretch of the route.
     *
     * @param length of the pipe, m, to the centimetre
     * @param from elevation of its upper end above the nozzle axis, m
     * @param to elevation of its lower end, m
     */
    public record Stretch(double length, double from, double to) {}

    /** What came of laying it. */
    public sealed interface Laid {}

    /**
     * A route.
     *
     * @param route that was laid
     */
    public record Done(Route route) implements Laid {}

    /**
     * No route.
     *
     * @param why in words
     */
    public record Impossible(String why) implements Laid {}

    private Route(Reading design, Section section, String path, List<Stretch> stretches) {
        this.design = design;
        this.section = section;
        this.path = path;
        this.stretches = List.copyOf(stretches);
    }

    /**
     * {@return a section of a design laid along a track}
     *
     * @param reading of the design; it holds one
     * @param name of the section; null for the longest
     * @param noise of the track's heights, m
     */
    public static Laid of(Reading reading, Track track, @Nullable String name, double noise) {
        Design design = reading.design();
        if (design == null) {
            return new Impossible("the design cannot be read");
        }
        List<Section> sections = design.penstock().sections();
        int index = index(sections, name);
        if (index < 0) {
            return new Impossible("no section of the penstock is called " + name + "; it has "
                    + String.join(", ", sections.stream().map(Section::name).toList()));
        }
        Section section = sections.get(index);
        OptionalDouble told = top(design, sections, index);
        if (told.isEmpty()) {
            return new Impossible("tell from-elevation of section " + section.name()
                    + ": a track does not say how high above" + " the nozzle it begins");
        }
        double top = told.getAsDouble();
        double bottom = section.toElevation() == null ? 0 : Si.of(section.toElevation());
        List<Stretch> stretches = new ArrayList<>();
        List<Track.Stretch> shape = track.shape(noise);
        double share = (top - bottom) / track.fall();
        double fallen = 0;
        double at = top;
        for (int i = 0; i < shape.size(); i++) {
            fallen += shape.get(i).fall();
            double next = i + 1 == shape.size() ? bottom : cm(top - share * fallen);
            stretches.add(new Stretch(upToCm(Math.hypot(shape.get(i).along(), at - next)), at, next));
            at = next;
        }
        return new Done(
                new Route(reading, section, ElementPath.item("/penstock/sections", sections, index), stretches));
    }

    private static int index(List<Section> sections, @Nullable String name) {
        int index = -1;
        for (int i = 0; i < sections.size(); i++) {
            boolean meant = name == null
                    ? index < 0
                            || Si.of(sections.get(i).length())
                                    > Si.of(sections.get(index).length())
                    : sections.get(i).name().equals(name);
            index = meant ? i : index;
        }
        return index;
    }

    private static OptionalDouble top(Design design, List<Section> sections, int index) {
        Section section = sections.get(index);
        if (section.fromElevation() != null) {
            return OptionalDouble.of(Si.of(section.fromElevation()));
        }
        if (index == 0) {
            return OptionalDouble.of(cm(Plant.of(design).numbers().site().grossHead()));
        }
        Section above = sections.get(index - 1);
        return above.toElevation() == null ? OptionalDouble.empty() : OptionalDouble.of(Si.of(above.toElevation()));
    }

    private static double cm(double metres) {
        return Math.rint(metres * 100) / 100;
    }

    /** A pipe is never shorter than what it falls. */
    private static double upToCm(double metres) {
        return Math.ceil(metres * 100 - 1e-6) / 100;
    }

    /** {@return the section that is laid} */
    public Section section() {
        return section;
    }

    /** {@return from the upper end down} */
    public List<Stretch> stretches() {
        return stretches;
    }

    /** {@return the whole length of the pipe, m} */
    public double length() {
        return stretches.stream().mapToDouble(Stretch::length).sum();
    }

    private static String metres(double value) {
        return BigDecimal.valueOf(value)
                        .setScale(2, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros()
                        .toPlainString() + " m";
    }

    /** {@return name of a stretch: the last keeps that of the section, with its valves and bends} */
    private String name(int stretch) {
        return stretch + 1 == stretches.size() ? section.name() : section.name() + " " + (stretch + 1);
    }

    /** {@return the sections in the form of a design file, without pipe and fittings} */
    public String sections() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            text.append("- name: ").append(name(i)).append('\n');
            text.append("  length: ").append(metres(stretch.length())).append('\n');
            text.append("  from-elevation: ").append(metres(stretch.from())).append('\n');
            text.append("  to-elevation: ").append(metres(stretch.to())).append('\n');
        }
        return text.toString();
    }

    /**
     * {@return the design's text with the section in as many; null where it stands otherwise than one field a line, so that it has to be
     * written by hand} All else stays: comments, order, line ends.
     */
    public @Nullable String written() {
        Stretch last = stretches.get(stretches.size() - 1);
        List<DesignEdit> edits = new ArrayList<>();
        DesignEdit length = DesignEdit.of(design, path + "/length", Si.quantity(last.length(), "m", Length.class));
        if (length == null) {
            return null;
        }
        edits.add(length);
        DesignEdit from = DesignEdit.of(design, path + "/from-elevation", Si.quantity(last.from(), "m", Length.class));
        if (from != null) {
            edits.add(from);
        }
        String edited = DesignEdit.apply(design.text(), edits);
        String end = edited.contains("\r\n") ? "\r\n" : "\n";
        List<String> lines = new ArrayList<>(List.of(edited.split("\r?\n", -1)));
        Position at = design.positions().exactly(path);
        if (at == null || !lines.get(at.line() - 1).matches("\\s*- [^{\\[].*")) {
            return null;
        }
        int first = at.line() - 1;
        int dash = lines.get(first).indexOf('-');
        String indent = " ".repeat(dash + 2);
        if (from == null) {
            int line = length.position().line();
            lines.add(line, indent + "from-elevation: " + metres(last.from()));
        }
        List<String> pipe = field(lines, first, dash, "pipe");
        if (pipe.isEmpty()) {
            return null;
        }
        List<String> above = new ArrayList<>();
        for (int i = 0; i + 1 < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            above.add(" ".repeat(dash) + "- name: " + name(i));
            above.addAll(pipe);
            above.add(indent + "length: " + metres(stretch.length()));
            above.add(indent + "from-elevation: " + metres(stretch.from()));
            above.add(indent + "to-elevation: " + metres(stretch.to()));
        }
        lines.addAll(first, above);
        String whole = String.join(end, lines);
        Design again = DesignReader.read(whole, design.source()).design();
        return again == null
                        && design.design() != null
                        && design.design().parts().isEmpty()
                ? null
                : whole;
    }

    /** The lines of a field of an item, as of an item's own: without the dash. */
    private static List<String> field(List<String> lines, int first, int dash, String name) {
        List<String> field = new ArrayList<>();
        for (int i = first; i < lines.size(); i++) {
            String line = i == first ? lines.get(i).replaceFirst("-", " ") : lines.get(i);
            int depth = line.length() - line.stripLeading().length();
            if (i > first && !line.isBlank() && depth <= dash) {
                break;
            }
            boolean begins = depth == dash + 2 && line.stripLeading().startsWith(name + ":");
            if (begins || (!field.isEmpty() && depth > dash + 2 && !line.isBlank())) {
                field.add(line);
            } else if (!field.isEmpty()) {
                break;
            }
        }
        return field;
    }
}
