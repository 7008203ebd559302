package org.leat.plant.solve;

import java.util.ArrayList;
import java.util.List;
import org.leat.hydraulics.Characteristics;
import org.leat.hydraulics.HeadEnvelope;
import org.leat.hydraulics.LowerEnd;
import org.leat.hydraulics.NozzleOpening;
import org.leat.hydraulics.RejoiningColumn;
import org.leat.hydraulics.SeriesStop;
import org.leat.hydraulics.SurgeLine;
import org.leat.hydraulics.SurgeSection;
import org.leat.hydraulics.UpperEnd;
import org.leat.hydraulics.VapourHead;
import org.leat.law.Gravity;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.plant.solved.Surge;
import org.leat.plant.solved.Surge.PressureRange;
import org.leat.plant.solved.WaterSide;

/**
 * Runs the method of characteristics on the penstock of a plant, cold. The grid is as fine as a fixed amount of work allows,
 * so that a slow change, which a coarse grid follows as well, costs no more than a fast one.
 */
public final class SurgeRun {

    private static final double MOST_NODE_STEPS = 20_000;
    private static final double MOST_REACHES = 48;
    private static final double FEWEST_REACHES = 8;
    private static final double RETURNS_AFTER = 3;

    /** Steps times nodes of a run at most, whatever time a design states. */
    private static final double MOST_WORK = 2e6;

    /** Return times that a run follows in any case. */
    private static final double FEWEST_RETURNS = 80;

    /** Return times of a change at most before the blows of a parted column are followed. */
    private static final double MOST_RETURNS_TO_PARTING = 100;

    /** Head by which dissolved air lets a column part before the water boils, m; common practice. */
    private static final double DISSOLVED_AIR = 2;

    private final PlantNumbers numbers;
    private final SurgeLine line;
    private final WaterSide water;
    private final double flow;
    private final double weight;
    private final double boilingHead;

    /**
     * Prepares a line.
     *
     * @param water running with the pipe full
     * @param weight of the coldest water, N/m³
     */
    public SurgeRun(PlantNumbers numbers, WaterSide water, double weight) {
        this.numbers = numbers;
        this.water = water;
        this.weight = weight;
        this.flow = water.flow();
        List<SurgeSection> sections = new ArrayList<>();
        for (int i = 0; i < numbers.penstock().sections().size(); i++) {
            SectionNumbers s = numbers.penstock().sections().get(i);
            double friction = water.sections().get(i).frictionFactor();
            sections.add(new SurgeSection(
                            s.length(), s.bore(), s.waveSpeed().or(0), friction, s.fromElevation(), s.toElevation())
                    .withFittings(s.lossCoefficient()));
        }
        this.line = new SurgeLine(sections, numbers.site().grossHead());
        double vapour =
                WaterNumbers.at(numbers.site().highestWaterTemperature()).vapourPressure();
        this.boilingHead = VapourHead.of(vapour, numbers.site().atmosphericPressure(), weight / Gravity.STANDARD);
    }

    /**
     * {@return a time of a change, s, no longer than is followed} A slower one makes a lower wave: by then it is some
     * hundredths of that of an instant one, and this one bounds it.
     */
    public double followed(double change) {
        return Math.min(change, 0.5 * longest());
    }

    private double longest() {
        double nodes = FEWEST_REACHES + numbers.penstock().sections().size();
        return line.returnTime() * Math.max(FEWEST_RETURNS, MOST_WORK / (2 * nodes * nodes));
    }

    /** {@return the surge of a change at the nozzles} */
    public Surge atNozzles(LowerEnd lower, double change) {
        return run(new UpperEnd.Open(), lower, change, change + RETURNS_AFTER * line.returnTime());
    }

    /** {@return the surge of a change at the intake, the nozzles open: until the draining column has come to rest} */
    public Surge atIntake(UpperEnd upper, LowerEnd lower, double change) {
        double drain = line.inertia() * flow / line.workingHead(flow);
        return run(upper, lower, change, change + 10 * drain + RETURNS_AFTER * line.returnTime());
    }

    /**
     * {@return a stop at the nozzles after which the column parts}
     *
     * @param opening of the nozzles
     * @param stopped flow that is stopped, m³/s
     */
    public PartedStop parted(NozzleOpening opening, double stopped) {
        return new PartedStop(line, flow, opening, stopped, boilingHead, weight);
    }

    /** {@return whether the water stands above boiling everywhere before a stop, so that the blows of a parted column are followed} */
    public boolean wholeBefore() {
        return RejoiningColumn.wholeBefore(line, flow, boilingHead);
    }

    /** {@return a time of the whole travel, s, no longer than the blows of a parted column are followed} See {@link #followed}. */
    public double followedToParting(double change) {
        return Math.min(followed(change), MOST_RETURNS_TO_PARTING * line.returnTime());
    }

    private Surge run(UpperEnd upper, LowerEnd lower, double change, double wanted) {
        double duration = Math.min(wanted, longest());
        double affordable = Math.sqrt(MOST_NODE_STEPS * line.returnTime() / (2 * duration));
        int reaches = (int) Math.max(FEWEST_REACHES, Math.min(MOST_REACHES, affordable));
        // the peak runs up the pipe before its reflection lets the column part
        double first = Math.min(duration, change + 0.5 * line.returnTime());
        Characteristics.Runs runs = Characteristics.runs(line, flow, upper, lower, reaches, first, duration);
        return parts(runs.whole())
                ? surge(runs.early(), runs.whole(), !parts(runs.early()))
                : surge(runs.whole(), runs.whole(), true);
    }

    private boolean parts(HeadEnvelope envelope) {
        return envelope.cavitates(boilingHead + DISSOLVED_AIR);
    }

    /** Highest heads of the one, lowest of the other, on the same grid. */
    private Surge surge(HeadEnvelope high, HeadEnvelope envelope, boolean highestHolds) {
        List<SectionNumbers> sections = numbers.penstock().sections();
        List<PressureRange> nodes = new ArrayList<>();
        List<PressureRange> extremes = new ArrayList<>();
        List<PressureRange> along = new ArrayList<>();
        nodes.add(point(high, envelope, "intake", 0));
        for (int i = 0; i < sections.size(); i++) {
            String name = sections.get(i).name();
            int last = envelope.firstNode(i + 1) - 1;
            for (int node = envelope.firstNode(i); node <= last; node++) {
                along.add(point(high, envelope, name, node));
            }
            double running = water.nodes().get(i + 1).pressure();
            nodes.add(begunAt(running, point(high, envelope, name, last)));
            extremes.add(begunAt(
                    running,
                    new PressureRange(
                            name,
                            envelope.distance(last),
                            envelope.elevation(last),
                            weight * high.highestPressureHead(i),
                            weight * envelope.lowestPressureHead(i))));
        }
        PressureRange deepest = along.get(envelope.lowestPressureNode());
        boolean parts = parts(envelope);
        return new Surge(
                nodes,
                extremes,
                along,
                weight * boilingHead,
                deepest,
                envelope.airEntered(),
                highestHolds,
                envelope.waveSpeedChange(),
                parts ? new Amount.Missing("/penstock", "unknown/column-parts") : null);
    }

    /** A short piece has no joint of its own on the grid, but the pressure of running it had. */
    private static PressureRange begunAt(double running, PressureRange range) {
        return new PressureRange(
                range.at(), range.distance(), range.elevation(), range.highest(), Math.min(running, range.lowest()));
    }

    /** {@return return time of a piece too short to have a step of the finest grid, s} */
    private double leastReturnTime() {
        return line.returnTime() / (2 * MOST_REACHES);
    }

    /** {@return rise of head in each section, from the tank down, as the wave of an instant stop of a flow first passes, m} */
    public List<Double> firstPass(double stopped) {
        return SeriesStop.firstPass(line, stopped, leastReturnTime());
    }

    private PressureRange point(HeadEnvelope high, HeadEnvelope envelope, String at, int node) {
        double elevation = envelope.elevation(node);
        return new PressureRange(
                at,
                envelope.distance(node),
                elevation,
                weight * (high.highest(node) - elevation),
                weight * (envelope.lowest(node) - elevation));
    }
}
