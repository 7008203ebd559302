package org.leat.choice;

import java.util.List;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.quantity.Si;

/**
 * A survey in SI.
 *
 * @param head m
 * @param pipe length, m
 * @param cable length, m
 * @param stream most water first
 * @param fullPipeShare share of the year in which the pipe must stay full
 * @param loads as the survey states them
 */
record SurveyNumbers(
        double head, double pipe, double cable, List<StreamLevel> stream, double fullPipeShare, List<Load> loads) {

    private static final double USUAL_CABLE = 10;
    private static final double HOUR = 3600;
    private static final int MONTHS = 12;

    static SurveyNumbers of(SiteSurvey survey, SiteNumbers site) {
        return new SurveyNumbers(
                site.grossHead(),
                Si.of(survey.pipeLength()),
                Si.of(survey.cableLength(), USUAL_CABLE),
                site.stream(),
                site.fullPipeShare(),
                survey.loads());
    }

    /** {@return the flow there is for a plant in a share of the year or more of it, m³/s} */
    double available(double share) {
        double flow = stream.get(0).available();
        for (int i = 0; i < stream.size(); i++) {
            StreamLevel level = stream.get(i);
            double reached = switch (level.kind()) {
                case CONSTANT -> 1;
                case MONTH -> (i + 1.0) / MONTHS;
                case EXCEEDED -> level.at();
            };
            flow = level.available();
            if (reached >= share - 1e-9) {
                return flow;
            }
        }
        return flow;
    }

    private static double power(Load load) {
        return Si.of(load.power()) * (load.count() == null ? 1 : load.count());
    }

    private static boolean alternating(Load load) {
        return load.supply() != LoadSupply.BUS;
    }

    /** {@return whether anything runs on alternating current} */
    boolean inverter() {
        return loads.stream().anyMatch(SurveyNumbers::alternating);
    }

    /** {@return what all on the inverter take at once, W} */
    double together() {
        return loads.stream()
                .filter(SurveyNumbers::alternating)
                .mapToDouble(SurveyNumbers::power)
                .sum();
    }

    /** {@return what the hardest start takes while everything else runs, W} */
    double starting() {
        double most = 0;
        for (Load load : loads) {
            if (alternating(load)) {
                double factor = load.surgeFactor() == null ? 1 : load.surgeFactor();
                most = Math.max(most, (factor - 1) * Si.of(load.power()));
            }
        }
        return together() + most;
    }

    /** {@return what the loads take in a day, J} */
    double daily() {
        double sum = 0;
        for (Load load : loads) {
            sum += power(load) * (load.hoursPerDay() == null ? 0 : load.hoursPerDay()) * HOUR;
        }
        return sum;
    }
}
