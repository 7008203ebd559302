package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.ElementPath;
import org.leat.design.Pipe;
import org.leat.design.Section;
import org.leat.plant.numbers.SectionNumbers;

/**
 * A section of the penstock with its place in the design.
 *
 * @param index among the sections, from zero at the intake
 * @param path of the section
 * @param stated as the design states it
 * @param numbers the same in SI
 */
public record PipeSection(int index, String path, Section stated, SectionNumbers numbers) {

    /** {@return every section, from the intake down} */
    public static List<PipeSection> all(Judgement j) {
        List<Section> sections = j.design().penstock().sections();
        List<String> paths = ElementPath.items("/penstock/sections", sections);
        List<PipeSection> all = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            SectionNumbers numbers = j.numbers().penstock().sections().get(i);
            all.add(new PipeSection(i, paths.get(i), sections.get(i), numbers));
        }
        return all;
    }

    /** {@return the sections of a kind of pipe, from the intake down} */
    public static List<PipeSection> of(Judgement j, Predicate<Pipe> which) {
        return all(j).stream().filter(section -> which.test(section.pipe())).toList();
    }

    /** {@return the section at which, or at whose pipe or below, a rule failed} */
    public static PipeSection of(Judgement j, Outcome failure) {
        return all(j).stream()
                .filter(section -> (failure.path() + "/").startsWith(section.path() + "/"))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no section at " + failure.path()));
    }

    /** {@return its pipe as the design states it} */
    public Pipe pipe() {
        return stated.pipe();
    }

    public boolean isHose() {
        return pipe() instanceof Pipe.Hose;
    }

    /** {@return where its pipe is stated} */
    public String pipePath() {
        return path + "/pipe";
    }

    /** {@return its pipe, to be answered for; told with {@code section}} */
    public Spot spot(Judgement j) {
        return j.at(pipePath()).with("section", stated.name());
    }
}
