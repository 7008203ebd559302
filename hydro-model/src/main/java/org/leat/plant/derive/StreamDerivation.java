package org.leat.plant.derive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.design.DurationPoint;
import org.leat.design.Stream;
import org.leat.design.StreamFlow;
import org.leat.hydraulics.FlowDurationCurve;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.StreamNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.quantity.Quantities.VolumeFlow;
import org.leat.quantity.Si;

/** Flows of the stream over the year, most water first. */
final class StreamDerivation {

    private static final double USUAL_FULL_PIPE_SHARE = 0.95;

    /** Where the duration curve of daily flows is told. */
    private static final double[] SHARES = {0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1};

    private StreamDerivation() {}

    static StreamNumbers of(@Nullable Stream stream, Assume assume) {
        List<Amount.Unknown> unknown = new ArrayList<>();
        return new StreamNumbers(
                levels(stream, assume, unknown),
                kept(stream),
                stream == null ? USUAL_FULL_PIPE_SHARE : Si.of(stream.fullPipeShare(), USUAL_FULL_PIPE_SHARE),
                unknown.isEmpty() ? null : unknown.get(0));
    }

    private static double kept(@Nullable Stream stream) {
        return stream == null ? 0 : Si.of(stream.keptInStream(), 0);
    }

    /** {@return the levels} The reason why a gauging gives none is added to {@code unknown}. */
    private static List<StreamLevel> levels(@Nullable Stream stream, Assume assume, List<Amount.Unknown> unknown) {
        if (stream == null) {
            return List.of();
        }
        double kept = kept(stream);
        List<StreamLevel> levels = new ArrayList<>();
        StreamFlow flow = stream.flow();
        if (flow instanceof StreamFlow.DurationCurve curve) {
            for (DurationPoint point : curve.points()) {
                levels.add(level(StreamLevel.Kind.EXCEEDED, Si.of(point.exceeded()), Si.of(point.flow()), 0, kept));
            }
        } else if (flow instanceof StreamFlow.Months months) {
            int month = 0;
            for (Quantity<VolumeFlow> mean : months.flows()) {
                levels.add(level(StreamLevel.Kind.MONTH, ++month, Si.of(mean), 0, kept));
            }
        } else if (flow instanceof StreamFlow.Daily daily) {
            double[] falling = daily.flows().stream()
                    .mapToDouble(Si::of)
                    .map(each -> -each)
                    .sorted()
                    .map(each -> -each)
                    .toArray();
            for (double share : SHARES) {
                levels.add(
                        level(StreamLevel.Kind.EXCEEDED, share, FlowDurationCurve.exceeded(falling, share), 0, kept));
            }
        } else {
            GaugingDerivation.Flow gauged = GaugingDerivation.flow(flow, assume);
            if (gauged.value() instanceof Amount.Known known) {
                levels.add(level(
                        StreamLevel.Kind.CONSTANT,
                        1,
                        known.value(),
                        gauged.plusMinus().orElse(0),
                        kept));
            } else if (gauged.value() instanceof Amount.Unknown reason) {
                unknown.add(reason);
            }
        }
        levels.sort(Comparator.comparingDouble(StreamLevel::flow).reversed());
        return levels;
    }

    private static StreamLevel level(StreamLevel.Kind kind, double at, double flow, double plusMinus, double kept) {
        return new StreamLevel(kind, at, flow, plusMinus, Math.max(0, flow - kept));
    }
}
