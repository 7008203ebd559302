package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.hydraulics.ClosingTimeSearch;
import org.leat.hydraulics.SurgeLine;
import org.leat.hydraulics.SurgeSection;
import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.plant.Amount;
import org.leat.plant.Closing;
import org.leat.plant.Running;
import org.leat.plant.SectionNumbers;

/** Least time in which the water may be shut so that no section sees more than its rating at its hottest. */
final class ClosingTimes {

    private static final double LONGEST = 300;

    private ClosingTimes() {}

    /** {@return the time by the closed form, s; zero where an instant stop fits} Unknown where a rating is. */
    static Amount least(Judgement j, Closing closing) {
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        double momentum = 0;
        double change =
                closing.velocityChange() * sections.get(sections.size() - 1).area();
        for (SectionNumbers section : sections) {
            momentum += section.length() * change / section.area();
        }
        double density = j.plant().numbers().water().density();
        double least = 0;
        double along = 0;
        for (int i = 0; i < sections.size(); i++) {
            SectionNumbers section = sections.get(i);
            along += section.length();
            if (!(section.ratingHot() instanceof Amount.Known rating)) {
                return section.ratingHot();
            }
            double room = rating.value() - j.cases().shut().sections().get(i);
            double instant = instant(j, closing);
            if (room > 0 && room < instant) { // without room the standing water is too much already
                double share = along / j.plant().numbers().penstock().length();
                least = Math.max(least, 2 * momentum * share * density / room);
            }
        }
        return Amount.of(Math.min(LONGEST, least));
    }

    /** Pressure of an instant stop of the same flow, Pa, in the section where it is greatest. */
    private static double instant(Judgement j, Closing closing) {
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        double change =
                closing.velocityChange() * sections.get(sections.size() - 1).area();
        double greatest = 0;
        for (SectionNumbers section : sections) {
            greatest = Math.max(greatest, section.waveSpeed().or(0) * change / section.area());
        }
        return greatest * j.plant().numbers().water().density();
    }

    /** {@return the time by the method of characteristics, s; zero where no wave speed or rating is known} */
    static double byCharacteristics(Judgement j, String during) {
        Closing closing = j.cases().closing().stream()
                .filter(c -> c.id().equals(during))
                .findFirst()
                .orElse(null);
        SurgeLine line = line(j, closing);
        if (closing == null || line == null) {
            return 0;
        }
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        double weight = j.plant().numbers().water().density() * Gravity.STANDARD;
        List<Double> allowed = new ArrayList<>();
        for (SectionNumbers section : sections) {
            allowed.add(section.ratingHot().or(0) / weight);
        }
        double flow =
                closing.velocityChange() * sections.get(sections.size() - 1).area();
        if (!(flow > 0) || !(line.workingHead(flow) > 0)) {
            return 0;
        }
        Answer answer = ClosingTimeSearch.least(line, flow, allowed, LONGEST);
        return answer instanceof Answer.Value value ? value.value() : LONGEST;
    }

    private static @Nullable SurgeLine line(Judgement j, @Nullable Closing closing) {
        List<SurgeSection> sections = new ArrayList<>();
        for (Running running : j.cases().running()) {
            if (closing != null && running.nozzles().equals(closing.nozzles())) {
                for (int i = 0; i < running.water().sections().size(); i++) {
                    SectionNumbers s = j.plant().numbers().penstock().sections().get(i);
                    if (!(s.waveSpeed() instanceof Amount.Known wave)) {
                        return null;
                    }
                    double factor = running.water().sections().get(i).frictionFactor();
                    sections.add(new SurgeSection(
                                    s.length(), s.bore(), wave.value(), factor, s.fromElevation(), s.toElevation())
                            .withFittings(s.lossCoefficient()));
                }
            }
        }
        double head = j.plant().numbers().site().grossHead();
        return sections.isEmpty() || !(head > 0) ? null : new SurgeLine(sections, head);
    }
}
