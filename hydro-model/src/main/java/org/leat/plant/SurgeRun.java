package org.leat.plant;

import java.util.ArrayList;
import java.util.List;
import org.leat.hydraulics.Characteristics;
import org.leat.hydraulics.HeadEnvelope;
import org.leat.hydraulics.LowerEnd;
import org.leat.hydraulics.SurgeLine;
import org.leat.hydraulics.SurgeSection;
import org.leat.hydraulics.UpperEnd;
import org.leat.hydraulics.VapourHead;
import org.leat.law.Gravity;

/**
 * Runs the method of characteristics on the penstock of a plant, cold. The grid is as fine as a fixed amount of work allows,
 * so that a slow change, which a coarse grid follows as well, costs no more than a fast one.
 */
final class SurgeRun {

    private static final double MOST_NODE_STEPS = 20_000;
    private static final double MOST_REACHES = 48;
    private static final double FEWEST_REACHES = 8;
    private static final double RETURNS_AFTER = 3;

    /** Head by which dissolved air lets a column part before the water boils, m; common practice. */
    private static final double DISSOLVED_AIR = 2;

    private final PlantNumbers numbers;
    private final SurgeLine line;
    private final double flow;
    private final double weight;
    private final double boilingHead;

    /**
     * Prepares a line.
     *
     * @param water running with the pipe full
     * @param weight of the coldest water, N/m³
     */
    SurgeRun(PlantNumbers numbers, WaterSide water, double weight) {
        this.numbers = numbers;
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
        double vapour = Water.at(numbers.site().highestWaterTemperature()).vapourPressure();
        this.boilingHead = VapourHead.of(vapour, numbers.site().atmosphericPressure(), weight / Gravity.STANDARD);
    }

    /** {@return the surge of a change at the nozzles} */
    Surge atNozzles(LowerEnd lower, double change) {
        return run(new UpperEnd.Open(), lower, change + RETURNS_AFTER * line.returnTime());
    }

    /** {@return the surge of a change at the intake, the nozzles open: until the draining column has come to rest} */
    Surge atIntake(UpperEnd upper, LowerEnd lower, double change) {
        double drain = line.inertia() * flow / line.workingHead(flow);
        return run(upper, lower, change + 10 * drain + RETURNS_AFTER * line.returnTime());
    }

    private Surge run(UpperEnd upper, LowerEnd lower, double duration) {
        double affordable = Math.sqrt(MOST_NODE_STEPS * line.returnTime() / (2 * duration));
        int reaches = (int) Math.max(FEWEST_REACHES, Math.min(MOST_REACHES, affordable));
        return surge(Characteristics.run(line, flow, upper, lower, reaches, duration));
    }

    private Surge surge(HeadEnvelope envelope) {
        List<SectionNumbers> sections = numbers.penstock().sections();
        List<PressureRange> nodes = new ArrayList<>();
        List<PressureRange> extremes = new ArrayList<>();
        List<PressureRange> along = new ArrayList<>();
        nodes.add(point(envelope, "intake", 0));
        for (int i = 0; i < sections.size(); i++) {
            String name = sections.get(i).name();
            int last = envelope.firstNode(i + 1) - 1;
            for (int node = envelope.firstNode(i); node <= last; node++) {
                along.add(point(envelope, name, node));
            }
            nodes.add(point(envelope, name, last));
            extremes.add(new PressureRange(
                    name,
                    envelope.distance(last),
                    envelope.elevation(last),
                    weight * envelope.highestPressureHead(i),
                    weight * envelope.lowestPressureHead(i)));
        }
        PressureRange deepest = along.get(envelope.lowestPressureNode());
        boolean parts = envelope.cavitates(boilingHead + DISSOLVED_AIR);
        return new Surge(
                nodes,
                extremes,
                along,
                weight * boilingHead,
                deepest,
                envelope.airEntered(),
                envelope.waveSpeedChange(),
                parts ? new Amount.Unknown("/penstock", "unknown/column-parts") : null);
    }

    private PressureRange point(HeadEnvelope envelope, String at, int node) {
        double elevation = envelope.elevation(node);
        return new PressureRange(
                at,
                envelope.distance(node),
                elevation,
                weight * (envelope.highest(node) - elevation),
                weight * (envelope.lowest(node) - elevation));
    }
}
