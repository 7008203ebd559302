package org.leat.hydraulics;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class GaugingPublishedTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-gauging");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void gauging_matches_the_published_value(PublishedCase c) {
        c.assertMatches(ours(c));
    }

    private static double ours(PublishedCase c) {
        return switch (c.family()) {
            case "vn" -> KindsvaterShen.flow(angle(c), c.in("h"), c.in("Ce"), c.in("kh"));
            case "vnp" ->
                KindsvaterShen.fullyContracted(angle(c), c.in("h"), 0.8, 2).orThrow();
            case "vnu" -> KindsvaterShen.relativeUncertainty(c.in("u_Ce_rel"), c.in("u_tan_rel"), c.in("u_h_rel"));
            case "kc" ->
                KindsvaterCarter.flow(c.in("b"), c.in("h"), c.in("p"), c.in("alpha"), c.in("beta"), c.in("kb"));
            case "rb" -> Rehbock.flow(c.in("b"), c.in("h"), c.in("p")).orThrow();
            case "bk" -> BucketGauging.flow(c.in("V"), 0, c.in("t")).value();
            case "fl" ->
                FloatGauging.flow(c.in("A"), c.in("L"), c.in("k"), 0, c.in("t")).value();
            case "va" -> MidSection.flow(c.list("x"), c.list("d"), c.list("v"));
            case "salt" -> c.has("t") ? readSlug(c) : sharpSlug(c);
            case "hg" ->
                HeadByGauge.head(c.in("p_Pa"), 0, c.in("dz"), c.in("T_C")).value();
            case "st" -> StudentT.factor((int) c.in("df"));
            default -> throw new AssertionError("no law bound to " + c);
        };
    }

    private static double readSlug(PublishedCase c) {
        return SaltSlug.flow(c.in("mass_kg"), c.in("cf"), c.in("ec0"), c.list("t"), c.list("ec"))
                .orThrow();
    }

    /** The wave {@code A (t/τ e^(1 - t/τ))^n} over a background of 50, read each second until it is over. */
    private static double sharpSlug(PublishedCase c) {
        double[] times = new double[400];
        double[] conductivities = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = i;
            double x = i / c.in("tau");
            conductivities[i] = 50 + c.in("A") * Math.pow(x * Math.exp(1 - x), c.in("n"));
        }
        return SaltSlug.flow(c.in("mass_kg"), c.in("cf"), 50, times, conductivities)
                .orThrow();
    }

    private static double angle(PublishedCase c) {
        return Math.toRadians(c.in("theta_deg"));
    }
}
