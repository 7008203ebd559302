package org.leat.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.electrics.AdiabaticHeating;
import org.leat.electrics.FuseGates;
import org.leat.electrics.MagneticRelease;
import org.leat.electrics.RunInductance;
import org.leat.electrics.SmoothCurrentBridge;
import org.leat.electrics.StandardFuseRatings;
import org.leat.electrics.TemperatureCompensation;
import org.leat.electrics.VoltageSag;
import org.leat.electrics.WindingTemperature;
import org.leat.hydraulics.AirInflow;
import org.leat.hydraulics.AirPocketFlushing;
import org.leat.hydraulics.ColumnSeparation;
import org.leat.hydraulics.KindsvaterCarter;
import org.leat.hydraulics.KindsvaterShen;
import org.leat.hydraulics.KirschmerRack;
import org.leat.hydraulics.LaminarFriction;
import org.leat.hydraulics.LossCoefficient;
import org.leat.hydraulics.ManningPipe;
import org.leat.hydraulics.Michaud;
import org.leat.hydraulics.PerforatedPlate;
import org.leat.hydraulics.Rehbock;
import org.leat.hydraulics.SaltSlug;
import org.leat.hydraulics.SwameeJain;
import org.leat.hydraulics.VentSizes;
import org.leat.hydraulics.VinsonCycles;
import org.leat.hydraulics.WireMesh;
import org.leat.turbine.BearingLife;
import org.leat.turbine.BoltStressArea;
import org.leat.turbine.CyclesToCrack;
import org.leat.turbine.JetSpacing;
import org.leat.turbine.LeastBucketCount;
import org.leat.turbine.LifeReliability;
import org.leat.turbine.ThermalDerating;

/** Every law at the ends of its published range: just inside a number, just outside a reason that names the end. */
class LawRangesTest {

    private static final double STEP = 1e-9;

    /** Classes that answer outside for something that is no end of a range of numbers, and what. */
    private static final Map<String, String> NO_RANGE = Map.of(
            "ClosingTimeSearch", "no time up to the longest tried is enough: SurgeStudyTest",
            "FittedRunner", "numbers that contradict momentum: ImpulseRunnerTest",
            "SurgeResult", "the water boils: SurgeStudyTest",
            "RejoiningBlows", "blows still grow: RejoiningColumnTest",
            "GasCurrent", "no published value of one kind: PublishedDevicesTest",
            "TorquePeak", "a winding without inductance: AlternatorTest");

    /** Each law by one input, all others fixed at common values. */
    private static final Map<String, DoubleFunction<Answer>> LAWS = laws();

    private static Map<String, DoubleFunction<Answer>> laws() {
        double air = 101_325;
        Map<String, DoubleFunction<Answer>> laws = new HashMap<>();
        laws.put("AirInflow,drop", x -> AirInflow.perArea(x, 0.6, air, 1.204));
        laws.put("AirInflow.drop,flow over area", x -> AirInflow.drop(x * Math.PI / 4, 1, 0.6, air, 1.204));
        laws.put("AirPocketFlushing,fall", x -> AirPocketFlushing.leastVelocity(0.1, x));
        laws.put("ColumnSeparation.afterFirstCavity,surge over head", x -> ColumnSeparation.afterFirstCavity(1, x, 0));
        laws.put("ColumnSeparation.bound,surge over least head", x -> ColumnSeparation.bound(1, x, 0));
        laws.put("KirschmerRack,blockedShare", x -> KirschmerRack.lossCoefficient(2.42, 0.01, 0.02, 1, x));
        laws.put("KindsvaterCarter,head", x -> KindsvaterCarter.flow(0.5, x, 0.5, 1));
        laws.put("KindsvaterCarter,width", x -> KindsvaterCarter.flow(x, 0.1, 0.5, 1));
        laws.put("KindsvaterCarter,crestHeight", x -> KindsvaterCarter.flow(0.5, 0.05, x, 1));
        laws.put("KindsvaterCarter,head/crestHeight", x -> KindsvaterCarter.flow(0.5, x / 2, 0.5, 1));
        laws.put("KindsvaterCarter,channelWidth - width", x -> KindsvaterCarter.flow(0.25, 0.1, 0.5, 0.25 + x));
        laws.put("KindsvaterShen,angle", x -> KindsvaterShen.fullyContracted(x, 0.1, 1, 1));
        laws.put("KindsvaterShen,head", x -> KindsvaterShen.fullyContracted(1, x, 1, 1));
        laws.put("KindsvaterShen,crestHeight", x -> KindsvaterShen.fullyContracted(1, 0.1, x, 1));
        laws.put("KindsvaterShen,head/crestHeight", x -> KindsvaterShen.fullyContracted(1, x / 2, 0.5, 10));
        laws.put("KindsvaterShen,head/channelWidth", x -> KindsvaterShen.fullyContracted(1, 2 * x, 2, 2));
        laws.put("LaminarFriction,reynolds", LaminarFriction::frictionFactor);
        laws.put("LossCoefficient.contraction,includedAngle", x -> LossCoefficient.gradualContraction(0.08, 0.05, x));
        laws.put("LossCoefficient.enlargement,includedAngle", x -> LossCoefficient.gradualEnlargement(0.05, 0.08, x));
        laws.put("ManningPipe,flow", x -> ManningPipe.normalDepthRatio(x, 0.1, 0.01, 0.01));
        laws.put("Michaud,closingTime", x -> Michaud.head(300, 1, x, 300));
        laws.put("PerforatedPlate,openShare", PerforatedPlate::lossCoefficient);
        laws.put("Rehbock,head", x -> Rehbock.flow(1, x, 1));
        laws.put("Rehbock,width", x -> Rehbock.flow(x, 0.1, 0.5));
        laws.put("Rehbock,crestHeight", x -> Rehbock.flow(1, 0.05, x));
        laws.put("Rehbock,head/crestHeight", x -> Rehbock.flow(1, x / 2, 0.5));
        laws.put(
                "SaltSlug,last rise of conductivity over peak",
                x -> SaltSlug.flow(1, 1, 0, new double[] {0, 1, 2}, new double[] {0, 1, x}));
        laws.put("SwameeJain,reynolds", x -> SwameeJain.frictionFactor(x, 1e-4));
        laws.put("SwameeJain,relativeRoughness", x -> SwameeJain.frictionFactor(1e5, x));
        laws.put("VentSizes,bore", VentSizes::atLeast);
        laws.put("VinsonCycles,peakHoopStress", VinsonCycles::toFailure);
        laws.put("WireMesh,openShare", WireMesh::lossCoefficient);
        laws.put("BearingLife,equivalentLoad", x -> BearingLife.basic(10_000, x, 100, false));
        laws.put("BoltStressArea,diameter", BoltStressArea::coarsePitch);
        laws.put("CyclesToCrack,stress", x -> CyclesToCrack.of(x, 5e7, 6e6, 1e7));
        laws.put("JetSpacing,speedRatio", x -> JetSpacing.least(18, x, 0.02, 0.1));
        laws.put("LeastBucketCount,tipRadius", x -> LeastBucketCount.of(0.1, x, 0.01, 0));
        laws.put("LifeReliability,reliability", LifeReliability::factor);
        laws.put("ThermalDerating,temperature", x -> ThermalDerating.factor(x, 353.15));
        laws.put("AdiabaticHeating,clearing time", x -> AdiabaticHeating.leastArea(1000, x, 115e6));
        laws.put("AdiabaticHeating.longest,clearing time", x -> AdiabaticHeating.longestTime(1, Math.sqrt(x), 1));
        laws.put("FuseGates,rating", x -> FuseGates.current(FuseGates.Time.MELTS_5_S, x));
        laws.put("FuseGates.melts,current", FuseGates::greatestThatMelts);
        laws.put("MagneticRelease,frequency", MagneticRelease::atFrequency);
        laws.put("RunInductance,spacing", x -> RunInductance.perConductor(5e-8, x, 0.005));
        laws.put("SmoothCurrentBridge,cos μ", x -> SmoothCurrentBridge.overlap(Math.sqrt(2), 1, 1 - x));
        laws.put("StandardFuseRatings,current", StandardFuseRatings::atLeast);
        laws.put(
                "TemperatureCompensation,battery temperature",
                x -> TemperatureCompensation.voltage(24, 2.3, -0.004, x));
        laws.put("WindingTemperature,loss times thermal resistance", x -> WindingTemperature.of(30, x, 1));
        laws.put("VoltageSag,inverter input power", x -> VoltageSag.underPower(50, 0.1, x));
        return laws;
    }

    /** One row of the table. */
    record Range(String law, String input, String low, String lowEnd, String high, String highEnd) {
        Answer at(double value) {
            DoubleFunction<Answer> function = LAWS.get(law + "," + input);
            assertThat(function).as(law + "," + input).isNotNull();
            return function.apply(value);
        }

        @Override
        public String toString() {
            return law + ", " + input;
        }
    }

    static List<Range> ranges() {
        try (InputStream in = LawRangesTest.class.getResourceAsStream("/law-ranges.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("class,"))
                    .map(line -> line.split(",", -1))
                    .map(c -> new Range(c[0], c[1], c[2], c[3], c[4], c[5]))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("ranges")
    void just_inside_an_end_there_is_a_number_and_just_outside_a_reason(Range range) {
        if (!range.low().isEmpty()) {
            holds(range, Double.parseDouble(range.low()), range.lowEnd(), -1);
        }
        if (!range.high().isEmpty()) {
            holds(range, Double.parseDouble(range.high()), range.highEnd(), 1);
        }
    }

    /** @param outward the sign of the way out of the range */
    private static void holds(Range range, double tabled, String kind, int outward) {
        double far = tabled == 0 ? outward * 0.01 : tabled * (1 + outward * 0.01);
        Answer.Outside reason = reason(range, far);
        double end = (outward < 0 ? reason.low() : reason.high()).orElseThrow();
        assertThat(end).as("the end that the answer names").isCloseTo(tabled, within(1e-4 * Math.abs(tabled)));
        if (kind.equals("only")) {
            assertThat(range.at(tabled).isValue()).as("at %s", tabled).isTrue();
            return;
        }
        double step = outward * (end == 0 ? STEP : STEP * Math.abs(end));
        assertThat(range.at(end - step).isValue()).as("just inside %s", end).isTrue();
        Answer.Outside beyond = reason(range, end + step);
        assertThat(beyond.value()).isCloseTo(end + step, within(1e-6 * Math.max(1, Math.abs(end))));
        assertThat(beyond.low().isPresent() || beyond.high().isPresent()).isTrue();
        beyond.low()
                .ifPresent(
                        low -> beyond.high().ifPresent(high -> assertThat(low).isLessThan(high)));
        assertThat(beyond.unit()).isNotBlank();
        if (!kind.equals("near")) {
            assertThat(range.at(end).isValue()).as("at %s", end).isEqualTo(kind.equals("in"));
        }
    }

    private static Answer.Outside reason(Range range, double value) {
        Answer answer = range.at(value);
        assertThat(answer).as("%s at %s", range, value).isInstanceOf(Answer.Outside.class);
        Answer.Outside outside = (Answer.Outside) answer;
        assertThat(outside.input()).isEqualTo(range.input());
        return outside;
    }

    private static final Pattern NAMES_A_RANGE = Pattern.compile("Answer\\.(outside|below|above)\\(");

    @Test
    void every_law_that_has_an_outside_is_in_the_table() throws IOException {
        Set<String> answering = new TreeSet<>();
        for (String name : List.of("hydraulics", "turbine", "electrics")) {
            try (Stream<Path> files = Files.list(Path.of("src/main/java/org/leat", name))) {
                for (Path file : files.toList()) {
                    if (NAMES_A_RANGE.matcher(Files.readString(file)).find()) {
                        answering.add(file.getFileName().toString().replace(".java", ""));
                    }
                }
            }
        }
        Set<String> told = ranges().stream()
                .map(range -> range.law().replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        told.addAll(NO_RANGE.keySet());
        assertThat(answering).hasSizeGreaterThan(30).isEqualTo(told);
    }
}
