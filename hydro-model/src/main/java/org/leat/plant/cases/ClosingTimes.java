package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.hydraulics.ClosingTimeSearch;
import org.leat.hydraulics.SurgeLine;
import org.leat.hydraulics.SurgeSection;
import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;

/** Least time in which the water may be shut so that no section sees more than its rating at its hottest. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class ClosingTimes {

    private static final double LONGEST = 600;
    private static final int HALVINGS = 6;

    private ClosingTimes() {}

    /**
     * {@return the time of the whole travel, s, by the closed form; by the method of characteristics where that asks for more; zero
     * where an instant stop fits} Unknown where a rating is.
     */
    public static Amount least(Cases cases, Closing closing) {
        List<SectionNumbers> sections = cases.numbers().penstock().sections();
        double momentum = 0;
        double change =
                closing.velocityChange() * sections.get(sections.size() - 1).area();
        for (SectionNumbers section : sections) {
            momentum += section.length() * change / section.area();
        }
        double density = cases.numbers().water().density();
        double instant = instant(cases, closing);
        double least = 0;
        double along = 0;
        for (int i = 0; i < sections.size(); i++) {
            SectionNumbers section = sections.get(i);
            along += section.length();
            if (!(section.ratingHot() instanceof Amount.Known rating)) {
                return section.ratingHot();
            }
            double room = rating.value() - cases.shut().sections().get(i);
            if (room > 0 && room < instant) { // without room the standing water is too much already
                double share = along / cases.numbers().penstock().length();
                least = Math.max(least, 2 * momentum * share * density / room);
            }
        }
        double travel = travel(closing, least);
        return Amount.of(
                closing.closingTime() < travel || fits(cases, closing) ? travel : byCharacteristics(cases, closing));
    }

    /** The time of the whole travel that stops the flow in a time, at most 2 % longer than needed. */
    private static double travel(Closing closing, double effective) {
        double tooShort = effective;
        double enough = effective;
        while (closing.effectiveTime(enough) < effective * (1 - 1e-12)) {
            tooShort = enough;
            enough *= 2;
        }
        for (int i = 0; i < HALVINGS && enough > tooShort; i++) {
            double middle = Math.sqrt(tooShort * enough);
            boolean holds = closing.effectiveTime(middle) >= effective;
            enough = holds ? middle : enough;
            tooShort = holds ? tooShort : middle;
        }
        return enough;
    }

    /** Whether the highest pressures stay within the ratings wherever the standing water does. */
    private static boolean fits(Cases cases, Closing closing) {
        List<SectionNumbers> sections = cases.numbers().penstock().sections();
        for (int i = 0; i < sections.size(); i++) {
            if (sections.get(i).ratingHot() instanceof Amount.Known rating
                    && cases.shut().sections().get(i) < rating.value()
                    && closing.sections().get(i).or(0) > rating.value() * (1 + 1e-9)) {
                return false;
            }
        }
        return true;
    }

    /** Pressure of an instant stop of the same flow, Pa, in the section where it is greatest. */
    private static double instant(Cases cases, Closing closing) {
        List<SectionNumbers> sections = cases.numbers().penstock().sections();
        double change =
                closing.velocityChange() * sections.get(sections.size() - 1).area();
        double greatest = 0;
        for (SectionNumbers section : sections) {
            greatest = Math.max(greatest, section.waveSpeed().or(0) * change / section.area());
        }
        return greatest * cases.numbers().water().density();
    }

    /** {@return the time by the method of characteristics, s; zero where no wave speed or rating is known} */
    public static double byCharacteristics(Cases cases, Closing closing) {
        SurgeLine line = line(cases, closing);
        if (line == null) {
            return 0;
        }
        List<SectionNumbers> sections = cases.numbers().penstock().sections();
        double weight = cases.numbers().water().density() * Gravity.STANDARD;
        List<Double> allowed = new ArrayList<>();
        for (SectionNumbers section : sections) {
            allowed.add(section.ratingHot().or(0) / weight);
        }
        double flow = flow(cases, closing);
        if (!(flow > 0) || !(line.workingHead(flow) > 0)) {
            return 0;
        }
        Answer answer = ClosingTimeSearch.least(line, flow, allowed, LONGEST, closing::opening);
        return answer instanceof Answer.Value value ? value.value() : LONGEST;
    }

    private static double flow(Cases cases, Closing closing) {
        return cases.running().stream()
                .filter(running -> running.nozzles().equals(closing.nozzles()))
                .mapToDouble(running -> running.water().fullPipeFlow())
                .findFirst()
                .orElse(0);
    }

    private static @Nullable SurgeLine line(Cases cases, Closing closing) {
        List<SurgeSection> sections = new ArrayList<>();
        for (Running running : cases.running()) {
            if (running.nozzles().equals(closing.nozzles())) {
                for (int i = 0; i < running.water().sections().size(); i++) {
                    SectionNumbers s = cases.numbers().penstock().sections().get(i);
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
        double head = cases.numbers().site().grossHead();
        return sections.isEmpty() || !(head > 0) ? null : new SurgeLine(sections, head);
    }
}
