package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.WaterSide.SectionFlow;

/**
 * The worked example of the docs: every step done here in plain arithmetic, without any of the program's laws, held
 * against the program within half a percent and against the page to the letter.
 */
class WorkedExampleTest {

    private static final Path ROOT = Path.of("").toAbsolutePath().getParent();
    private static final double G = 9.80665;

    private final Map<String, String> words = new LinkedHashMap<>();

    @Test
    void every_number_of_the_worked_example_follows_by_hand() throws IOException {
        Plant plant =
                Plant.of(Objects.requireNonNull(DesignReader.read(ROOT.resolve("hydro-examples/designs/ash-gill.yaml"))
                        .design()));
        Cases cases = plant.solve();
        water(cases);
        pressure(cases);
        wheelAndBridge(cases);
        Path page = ROOT.resolve("docs/worked-example.md");
        if (Boolean.getBoolean("leat.write-docs") && !Files.exists(page)) {
            Files.writeString(page, filled());
        }
        String now = filled();
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(page, withOutputOf(Files.readString(page), now));
        }
        assertThat(withoutOutput(Files.readString(page))).isEqualTo(withoutOutput(now));
    }

    private void water(Cases cases) {
        Running running = cases.running().get(0);
        SectionFlow section = running.water().sections().get(0);
        double rho = 999.70;
        double nu = 1.3063e-6;
        say("rho", rho, 2);
        words.put("nu", "1.306·10⁻⁶");
        double sdrExact = 2 * Math.pow(10, 0.9) + 1;
        say("sdrExact", sdrExact, 3);
        say("wallExact", 63 / sdrExact, 3);
        double wall = Math.ceil(63 / sdrExact * 10) / 10;
        double tolerance = Math.ceil((0.1 * wall + 0.1) * 10 - 1e-9) / 10;
        say("wall", wall, 1);
        say("wallTolerance", tolerance, 1);
        double bore = (63 - 2 * (wall + tolerance / 2)) / 1000;
        double area = Math.PI / 4 * bore * bore;
        say("bore", bore * 1000, 1);
        say("area", area, 6);
        double q = 0.001;
        double f = 0.02;
        double head = 25;
        double v = 0;
        double jet = 0;
        for (int i = 0; i < 200; i++) {
            v = q / area;
            f = Math.pow(-2 * Math.log10(2e-5 / (3.7 * bore) + 2.51 / (v * bore / nu * Math.sqrt(f))), -2);
            head = 25 - (f * 100 / bore + 0.7) * v * v / (2 * G);
            jet = 0.97 * Math.sqrt(2 * G * head);
            q = jet * Math.PI / 4 * 0.01 * 0.01;
        }
        say("flow", q * 1000, 4);
        both("velocity", v, section.velocity(), 4);
        both("reynolds", v * bore / nu, section.reynolds(), 0);
        both("friction", f, section.frictionFactor(), 5);
        both("pipeLoss", f * 100 / bore * v * v / (2 * G), section.frictionLoss(), 4);
        both("fittingsLoss", 0.7 * v * v / (2 * G), section.fittingsLoss(), 5);
        both("netHead", head, running.water().netHead(), 3);
        both("jet", jet, running.water().jetVelocity(), 3);
        say("flowBack", q * 1000, 4);
        program("flow", q * 1000, running.water().flow() * 1000, 4);
        both("share", 100 * (1 - head / 25), 100 * running.water().frictionShare(), 2);
        both("jetPower", 0.5 * rho * q * jet * jet, running.water().jetPower(), 1);
    }

    private void pressure(Cases cases) {
        double rho = 999.70;
        double bulk = 2.0940e9;
        double v = cases.running().get(0).water().sections().get(0).velocity();
        both("static", rho * G * 25 / 1e5, cases.shut().sections().get(0) / 1e5, 4);
        words.put("bulk", "2.094·10⁹");
        double sound = Math.sqrt(bulk / rho);
        say("sound", sound, 1);
        double d = 0.0549;
        double e = (0.063 - d) / 2;
        double c1 = 2 * e / d * 1.45 + d / (d + e) * (1 - 0.45 * 0.45);
        say("wallFactor", c1, 4);
        double modulus = 1.7524e9;
        words.put("modulus", "1.752·10⁹");
        double wave = sound / Math.sqrt(1 + bulk * d * c1 / (modulus * e));
        Closing plugged = cases.closing().stream()
                .filter(c -> c.cause() == Closing.Cause.NOZZLE_PLUGGED)
                .findFirst()
                .orElseThrow();
        Amount given = cases.numbers().penstock().last().waveSpeed();
        both("wave", wave, given.or(Double.NaN), 1);
        double surge = wave * v / G;
        both("surge", surge, plugged.surgeHead().or(Double.NaN), 2);
        both("peak", rho * G * (25 + surge) / 1e5, plugged.sections().get(0).or(Double.NaN) / 1e5, 3);
    }

    private void wheelAndBridge(Cases cases) {
        var running = cases.running().get(0);
        var operatingPoint = running.operatingPoint();
        double q = running.water().flow();
        double jet = running.water().jetVelocity();
        double omega = operatingPoint.speed();
        double radius = 0.08;
        double kappa = 2 * 0.80;
        say("kappa", kappa, 2);
        say("speed", rpm(omega), 1);
        say("omega", omega, 3);
        double u = omega * radius;
        say("bucketSpeed", u, 3);
        both("ratio", u / jet, operatingPoint.speedRatio(), 4);
        double torque = 999.70 * q * radius * (jet - u) * kappa;
        both("torque", torque, operatingPoint.torque(), 4);
        both("shaft", torque * omega, operatingPoint.energy().at(EnergyAccount.Stage.SHAFT), 1);
        both("runaway", rpm(jet / radius), rpm(cases.loadLost().get(0).speed()), 0);

        double emf = 13.5 * rpm(omega) / 1000 * Math.sqrt(2.0 / 3);
        double electrical = 10 * omega;
        double r = 0.0625;
        double x = electrical * 0.00025;
        double z = Math.hypot(r, x);
        double psi = Math.atan2(x, r);
        say("emf", emf, 3);
        say("electrical", electrical, 1);
        say("reactance", x, 4);
        say("impedance", z, 4);
        say("psi", psi, 4);
        double resting = operatingPoint.bus().batteryResting();
        double ohm = cases.numbers().busResistance().bridgeToRegulator() + 0.001;
        say("resting", resting, 2);
        say("busOhm", ohm * 1000, 2);
        double current = 17;
        double clamp = 0;
        double decay = Math.exp(-r / x * Math.PI / 3);
        double i0 = 0;
        double alpha = 0;
        double v1 = 0;
        for (int i = 0; i < 100; i++) {
            clamp = resting + ohm * current + 1.6;
            i0 = clamp / (3 * r) * (1 - decay * decay) / (1 - decay + decay * decay);
            alpha = Math.asin(i0 * z / emf);
            v1 = 2 * clamp / Math.PI;
            double sum = 0;
            for (int n : new int[] {1, 5, 7, 11, 13}) {
                sum += r / (n * n * (r * r + n * n * x * x));
            }
            current = 3 / Math.PI * (emf / z * Math.cos(alpha) - v1 * sum);
        }
        double delta = psi - alpha;
        say("bus", clamp - 1.6, 3);
        say("clamp", clamp, 3);
        say("x", decay, 4);
        say("i0", i0, 3);
        say("alpha", alpha, 4);
        say("delta", delta, 4);
        say("check", emf * Math.sin(delta), 2);
        say("third", clamp / 3, 2);
        assertThat(emf * Math.sin(delta)).isGreaterThan(clamp / 3);
        both("current", current, operatingPoint.directCurrent(), 3);
        double squares = (Math.pow(emf * Math.cos(delta) - v1, 2) + Math.pow(emf * Math.sin(delta), 2)) / (z * z);
        for (int n : new int[] {5, 7, 11, 13}) {
            squares += v1 * v1 / (n * n) / (r * r + n * n * x * x);
        }
        double phase = Math.sqrt(squares / 2);
        both("phase", phase, operatingPoint.phaseCurrent(), 3);
        double airGap = clamp * current + 3 * r * phase * phase;
        both("airGap", airGap, operatingPoint.energy().at(EnergyAccount.Stage.AIR_GAP), 1);
        say("brake", airGap / omega, 4);
        assertThat(airGap / omega).isCloseTo(torque, within(0.005 * torque));
        both("battery", (resting + 0.001 * current) * current, operatingPoint.batteryPower(), 1);
        both("frequency", 10 * rpm(omega) / 60, operatingPoint.frequency(), 1);

        double warm = Math.sqrt(2) * 13.5 * rpm(jet / radius) / 1000;
        say("openWarm", warm, 1);
        both("open", warm * (1 + 0.0012 * 15), cases.loadLost().get(0).peakLineVoltage(), 1);
    }

    private static double rpm(double omega) {
        return omega * 30 / Math.PI;
    }

    private void both(String name, double hand, double program, int decimals) {
        say(name, hand, decimals);
        program(name, hand, program, decimals);
    }

    private void program(String name, double hand, double program, int decimals) {
        assertThat(hand).as(name).isCloseTo(program, within(0.005 * Math.abs(program)));
        say(name + "Program", program, decimals);
    }

    private void say(String name, double value, int decimals) {
        words.put(name, String.format(Locale.ROOT, "%." + decimals + "f", value));
    }

    private String filled() throws IOException {
        String template;
        try (InputStream in = WorkedExampleTest.class.getResourceAsStream("worked-example.md")) {
            template = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
        Matcher m = Pattern.compile("\\{(\\w+)}").matcher(template);
        return m.replaceAll(found -> {
            String word = words.get(found.group(1));
            assertThat(word).as(found.group()).isNotNull();
            return Matcher.quoteReplacement(word);
        });
    }

    /** The printed output is held by another test, on the real jar. */
    private static String withoutOutput(String page) {
        return page.replaceAll("(?s)```text\\n.*?```", "```text\n```");
    }

    private static String withOutputOf(String page, String filled) {
        Matcher m = Pattern.compile("(?s)```text\\n.*?```").matcher(page);
        String output = m.find() ? m.group() : "```text\n```";
        return filled.replaceAll("(?s)```text\\n.*?```", Matcher.quoteReplacement(output));
    }
}
