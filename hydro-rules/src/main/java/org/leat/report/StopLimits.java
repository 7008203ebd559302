package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Comparison;
import org.leat.check.Finding;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;
import org.leat.design.DumpSide;
import org.leat.design.Place;
import org.leat.design.RegulatorKind;
import org.leat.plant.Plant;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.FirstStart.StopLimit;

/**
 * When a first start is broken off: the limits of the rules, as far as something that is read can pass them, and what could not be
 * judged, which is a stop by itself until somebody has settled it.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class StopLimits {

    private final Plant plant;
    private final Rulebook rulebook;
    private final List<StopLimit> limits = new ArrayList<>();

    private StopLimits(Plant plant, Rulebook rulebook) {
        this.plant = plant;
        this.rulebook = rulebook;
    }

    /** {@return the limits of what is read, from what the rules compared} */
    public static List<StopLimit> of(Report report, Plant plant, Rulebook rulebook) {
        StopLimits stops = new StopLimits(plant, rulebook);
        report.findings().forEach(finding -> stops.add(finding.outcome()));
        return List.copyOf(stops.limits);
    }

    /** {@return errors of the design, worst first: it is not to be started} */
    public static List<Finding> failing(Report report) {
        return report.findings().stream()
                .filter(finding -> finding.failsAt(Level.ERROR))
                .sorted(Finding.WORST_FIRST)
                .toList();
    }

    /**
     * {@return what can hurt someone and is a warning, could not be judged, or must be looked at by a person: each a stop until
     * it is settled}
     *
     * <p>What a verdict counts as of safety, no more: an open question of what only costs money is none here.
     *
     * @param rulebook of the checker that examined it
     */
    public static List<Finding> unsettled(Report report, Rulebook rulebook) {
        return report.findings().stream()
                .filter(Finding::counts)
                .filter(finding -> isUnsettled(finding, rulebook))
                .sorted(Finding.WORST_FIRST)
                .toList();
    }

    private static boolean isUnsettled(Finding finding, Rulebook rulebook) {
        Outcome outcome = finding.outcome();
        return switch (outcome.kind()) {
            case FAIL -> rulebook.rule(outcome.rule()).warnsOfDanger(outcome.level());
            case OPEN, REVIEW -> finding.endangers();
            case PASS, NOT_APPLICABLE, INFORMATIONAL -> false;
        };
    }

    private void add(Outcome outcome) {
        Comparison compared = outcome.comparison();
        if (compared == null || compared.sense() == Comparison.Sense.AT_LEAST) {
            return;
        }
        double high = compared.high();
        switch (outcome.rule()) {
            case "penstock/static-pressure" -> {
                // the weakest section decides, wherever it lies: what it has left is left at the gauge
                double left = high - compared.value();
                double standing = plant.numbers().water().specificWeight()
                        * plant.numbers().site().grossHead();
                stop(outcome, standing + left, ReadingKind.STANDING_PRESSURE, ReadingKind.RUNNING_PRESSURE);
            }
            case "penstock/fittings-rating" ->
                stop(outcome, high, ReadingKind.STANDING_PRESSURE, ReadingKind.RUNNING_PRESSURE);
            case "alternator/overspeed" ->
                stop(outcome, high / plant.numbers().alternator().gearRatio(), ReadingKind.SPEED);
            case "bus/overvoltage" -> stop(outcome, high, ReadingKind.BRIDGE_VOLTS);
            case "protection/touch-voltage" ->
                stop(
                        outcome,
                        high,
                        outcome.path().startsWith("/alternator") ? ReadingKind.LEAD_VOLTS : ReadingKind.BRIDGE_VOLTS);
            case "dump/own-rating" -> elements(outcome, high);
            case "alternator/winding-current" -> stop(outcome, high, ReadingKind.LEAD_AMPS);
            case "rectifier/current" -> stop(outcome, high, ReadingKind.BRIDGE_AMPS, ReadingKind.BATTERY_AMPS);
            case "battery/charge-current" -> stop(outcome, high, ReadingKind.BATTERY_AMPS);
            case "regulator/set-points" -> chargeVoltage(outcome);
            case "alternator/winding-temperature" ->
                stop(outcome, high - hotSpot(outcome), ReadingKind.WINDING_TEMPERATURE);
            case "cable/ampacity" -> ampacity(outcome, high);
            default -> {
                // nothing that is read passes its limit
            }
        }
    }

    /** The voltage at which the cold elements take what they are made for, V = √(P·R), where they stand. */
    private void elements(Outcome outcome, double power) {
        DumpLoadNumbers dump = plant.numbers().dumpLoad();
        if (dump != null) {
            RegulatorKind kind = plant.numbers().regulator().kind();
            boolean twoNodes = kind == RegulatorKind.TRACKING || kind == RegulatorKind.SERIES;
            limits.add(new StopLimit(
                    twoNodes && dump.side() == DumpSide.BATTERY ? ReadingKind.BATTERY_VOLTS : ReadingKind.BRIDGE_VOLTS,
                    Math.sqrt(power * dump.resistanceCold()),
                    outcome.rule()));
        }
    }

    /** The bank's own limit, where a set point was held against it. */
    private void chargeVoltage(Outcome outcome) {
        plant.numbers().battery().chargeVoltageLimit().map(limit -> {
            if (limits.stream().noneMatch(stop -> stop.what() == ReadingKind.BATTERY_VOLTS)) {
                stop(outcome, limit, ReadingKind.BATTERY_VOLTS);
            }
            return limit;
        });
    }

    private double hotSpot(Outcome outcome) {
        RuleInForce rule = rulebook.rule(outcome.rule());
        return rule.limits().containsKey("hot-spot")
                ? rule.limits().get("hot-spot").value()
                : 0;
    }

    private void ampacity(Outcome outcome, double high) {
        for (CableNumbers cable : plant.numbers().cables()) {
            if (outcome.path().startsWith(cable.path() + "/")) {
                if (cable.joins(Place.ALTERNATOR, Place.RECTIFIER)) {
                    stop(outcome, high, ReadingKind.LEAD_AMPS);
                } else if (cable.joins(Place.RECTIFIER, Place.BATTERY)
                        || cable.joins(Place.RECTIFIER, Place.REGULATOR)) {
                    stop(outcome, high, ReadingKind.BRIDGE_AMPS);
                } else if (cable.joins(Place.REGULATOR, Place.BATTERY)) {
                    stop(outcome, high, ReadingKind.BATTERY_AMPS);
                }
            }
        }
    }

    private void stop(Outcome outcome, double most, ReadingKind... what) {
        for (ReadingKind one : what) {
            if (outcome.comparison() != null && one.kind() == kindOf(outcome, one)) {
                limits.add(new StopLimit(one, most, outcome.rule()));
            }
        }
    }

    /** A limit of one kind is never that of a reading of another. */
    private static QuantityKind kindOf(Outcome outcome, ReadingKind fallback) {
        Comparison compared = outcome.comparison();
        return compared == null ? fallback.kind() : compared.kind();
    }
}
