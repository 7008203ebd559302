package org.leat.plant.derive;

import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import org.leat.design.ClinometerLeg;
import org.leat.design.GrossHead;
import org.leat.design.SaltReading;
import org.leat.design.StreamFlow;
import org.leat.hydraulics.BucketGauging;
import org.leat.hydraulics.Estimate;
import org.leat.hydraulics.FloatGauging;
import org.leat.hydraulics.HeadByClinometer;
import org.leat.hydraulics.HeadByGauge;
import org.leat.hydraulics.HeadByTube;
import org.leat.hydraulics.KindsvaterCarter;
import org.leat.hydraulics.KindsvaterShen;
import org.leat.hydraulics.SaltSlug;
import org.leat.law.Answer;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.Measured;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Heads and flows from what was read of them. */
final class GaugingDerivation {

    private static final String FLOW = "/site/stream/flow";

    /** The salt's calibration is per microsiemens a centimetre, S/m. */
    private static final double MICROSIEMENS_PER_CENTIMETRE = 1e-4;

    /** Relative uncertainty of a float's surface factor and of the reach's cross-section. */
    private static final double FLOAT_UNCERTAINTY = 0.15;

    private GaugingDerivation() {}

    /**
     * {@return the head; zero or below where the readings say so}
     *
     * @param celsius of the water in the standing pipe
     */
    static Estimate head(GrossHead head, double celsius) {
        if (head instanceof GrossHead.Stated stated) {
            return Estimate.of(stated.head().si(), stated.head().plusMinusSi());
        } else if (head instanceof GrossHead.Gauge gauge) {
            return HeadByGauge.head(
                    gauge.pressure().si(), gauge.pressure().plusMinusSi(), Si.of(gauge.gaugeAboveNozzle(), 0), celsius);
        } else if (head instanceof GrossHead.Tube tube) {
            return HeadByTube.head(Si.of(tube.reading(), 0), numbers(tube.steps()));
        }
        GrossHead.Clinometer read = (GrossHead.Clinometer) head;
        int n = read.legs().size();
        double[] distances = new double[n];
        double[] angles = new double[n];
        for (int i = 0; i < n; i++) {
            ClinometerLeg leg = read.legs().get(i);
            distances[i] = Si.of(leg.distance());
            // steeper than upright is the same fall seen from behind
            angles[i] = Math.asin(Math.sin(Si.of(leg.angle())));
        }
        return HeadByClinometer.head(Si.of(read.angleReading(), 0), distances, angles);
    }

    /** {@return one flow of the stream, or why its readings give none} */
    static Flow flow(StreamFlow flow, Assume assume) {
        if (flow instanceof StreamFlow.Constant constant) {
            double half = constant.flow().plusMinusSi();
            return new Flow(
                    Amount.of(constant.flow().si()), half > 0 ? OptionalDouble.of(half) : OptionalDouble.empty());
        } else if (flow instanceof StreamFlow.Bucket bucket) {
            return Flow.of(BucketGauging.flow(Si.of(bucket.volume()), 0, numbers(bucket.times())));
        } else if (flow instanceof StreamFlow.Floats floats) {
            double factor = assume.stated(
                    floats.surfaceFactor(),
                    FLOW + "/surface-factor",
                    QuantityKind.RATIO,
                    0.75,
                    0.6,
                    0.9,
                    "assumed/surface-factor");
            return Flow.of(FloatGauging.flow(
                    Si.of(floats.area()),
                    Si.of(floats.length()),
                    Math.min(1, factor),
                    FLOAT_UNCERTAINTY,
                    numbers(floats.times())));
        } else if (flow instanceof StreamFlow.SaltSlug salt) {
            return Flow.of(salt(salt), FLOW + "/readings", 0);
        } else if (flow instanceof StreamFlow.VNotchWeir weir) {
            return weir.crestHeight() == null || weir.channelWidth() == null
                    ? Flow.none(FLOW + "/crest-height", "unknown/weir-approach")
                    : Flow.of(
                            KindsvaterShen.fullyContracted(
                                    Si.of(weir.angle()),
                                    weir.head().si(),
                                    Si.of(weir.crestHeight()),
                                    Si.of(weir.channelWidth())),
                            FLOW + "/head",
                            KindsvaterShen.relativeUncertainty(
                                    KindsvaterShen.COEFFICIENT_UNCERTAINTY, 0, relative(weir.head())));
        } else if (flow instanceof StreamFlow.RectangularWeir weir) {
            return Flow.of(
                    KindsvaterCarter.flow(
                            Si.of(weir.width()),
                            weir.head().si(),
                            Si.of(weir.crestHeight()),
                            Si.of(weir.channelWidth())),
                    FLOW + "/head",
                    KindsvaterCarter.relativeUncertainty(
                            KindsvaterCarter.COEFFICIENT_UNCERTAINTY, 0, relative(weir.head())));
        }
        return Flow.none(FLOW, "unknown/gauging");
    }

    private static double relative(Measured<?> reading) {
        return reading.plusMinusSi() / reading.si();
    }

    private static Answer salt(StreamFlow.SaltSlug salt) {
        int n = salt.readings().size();
        double[] times = new double[n];
        double[] rises = new double[n];
        for (int i = 0; i < n; i++) {
            SaltReading reading = salt.readings().get(i);
            times[i] = Si.of(reading.time());
            rises[i] = Si.of(reading.conductivity()) / MICROSIEMENS_PER_CENTIMETRE;
            if (i > 0 && !(times[i] > times[i - 1])) {
                return Answer.below("salt slug, integration method", "time step", times[i] - times[i - 1], 0, "s");
            }
        }
        double background = Si.of(salt.background()) / MICROSIEMENS_PER_CENTIMETRE;
        return SaltSlug.flow(Si.of(salt.mass()), salt.calibration(), background, times, rises);
    }

    private static double[] numbers(List<? extends Quantity<?>> readings) {
        double[] numbers = new double[readings.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Si.of(readings.get(i));
        }
        return numbers;
    }

    /**
     * A flow that was gauged.
     *
     * @param value m³/s
     * @param plusMinus m³/s; empty where the readings cannot tell
     */
    record Flow(Amount value, OptionalDouble plusMinus) {

        static Flow none(String path, String reason) {
            return new Flow(Amount.missing(path, reason), OptionalDouble.empty());
        }

        static Flow of(Estimate estimate) {
            return new Flow(Amount.of(estimate.value()), estimate.plusMinus());
        }

        /** {@return what a law answered, with its relative uncertainty; zero where none is known} */
        static Flow of(Answer answer, String path, double relative) {
            Amount value = Amount.of(answer, path);
            return new Flow(
                    value,
                    value instanceof Amount.Known known && relative > 0
                            ? OptionalDouble.of(relative * known.value())
                            : OptionalDouble.empty());
        }
    }
}
