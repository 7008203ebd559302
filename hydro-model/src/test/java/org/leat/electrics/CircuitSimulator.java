package org.leat.electrics;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs the circuit simulator ngspice on a netlist of alternator, bridge and load. */
public final class CircuitSimulator {

    private static final Pattern MEASURE = Pattern.compile("^(\\w+)\\s*=\\s*([-+0-9.eE]+)", Pattern.MULTILINE);

    private CircuitSimulator() {}

    public static boolean installed() {
        String path = System.getenv("PATH");
        for (String folder : path == null ? new String[0] : path.split(java.io.File.pathSeparator, -1)) {
            if (Files.isExecutable(Path.of(folder, "ngspice"))) {
                return true;
            }
        }
        return false;
    }

    /** {@return the netlist: settled for the time constants of winding and load, then six periods measured} */
    public static String netlist(
            AlternatorConstants m, double speed, DcLoad load, BridgeFault fault, double settle, int pointsPerPeriod) {
        return netlist(m, speed, load, fault, settle, pointsPerPeriod, new DiodeLine(0.8, 0.005));
    }

    /** {@return the same with diodes of some threshold and slope} */
    public static String netlist(
            AlternatorConstants m,
            double speed,
            DcLoad load,
            BridgeFault fault,
            double settle,
            int pointsPerPeriod,
            DiodeLine diode) {
        double f = m.frequency(speed);
        double stop = (Math.ceil(settle * f) + 6) / f;
        double start = stop - 6 / f;
        double step = 1 / f / pointsPerPeriod;
        StringBuilder out = new StringBuilder("* alternator, bridge, load\n");
        String[] phase = {"a", "b", "c"};
        for (int k = 0; k < 3; k++) {
            String x = phase[k];
            boolean open = k == 0 && fault == BridgeFault.PHASE_OPEN;
            line(
                    out,
                    "Ve%s n%s1 nn SIN(0 %.10g %.10g 0 0 %d)",
                    x,
                    x,
                    m.phaseEmf(speed),
                    f,
                    k == 0 ? 0 : k == 1 ? -120 : 120);
            line(out, "R%s n%s1 n%s2 %.10g", x, x, x, open ? 1e8 : m.phaseResistance());
            line(out, "L%s n%s2 %s %.10g", x, x, x, m.phaseInductance());
            if (k == 0 && fault == BridgeFault.DIODE_SHORT) {
                line(out, "Rshort a p 1e-4");
            } else if (!(k == 0 && fault == BridgeFault.DIODE_OPEN)) {
                line(out, "VU%s %s u%s %.10g", x, x, x, diode.threshold());
                line(out, "DU%s u%s p DM", x, x);
            }
            line(out, "VL%s 0 l%s %.10g", x, x, diode.threshold());
            line(out, "DL%s l%s %s DM", x, x, x);
            line(out, "Rs%s %s 0 500k", x, x);
        }
        line(out, ".model DM D(IS=1e-12 N=0.02 RS=%.10g CJO=0)", Math.max(diode.slope(), 1e-4));
        line(out, "Rn nn 0 10Meg");
        line(out, "Vidc p pl 0");
        if (load instanceof DcLoad.Battery b) {
            line(out, "Rbat pl bx %.10g", Math.max(b.resistance(), 1e-6));
            line(out, "Vbat bx 0 %.10g", b.voltage());
        } else if (load instanceof DcLoad.Resistor r) {
            line(out, "Rload pl 0 %.10g", r.resistance());
        } else if (load instanceof DcLoad.Capacitor c) {
            line(out, "Rload pl 0 %.10g", c.resistance());
            line(out, "Cdc pl 0 %.10g IC=%.10g", c.capacitance(), c.charged());
            if (c.opensAfter() > 0) {
                line(out, "S1 pl bx sc 0 SWM");
                line(out, "Vsc sc 0 PULSE(1 0 %.10g 1u 1u 10 20)", c.opensAfter());
                line(out, ".model SWM SW(VT=0.5 VH=0 RON=1m ROFF=10Meg)");
                line(out, "Rbat bx by %.10g", c.batteryResistance());
                line(out, "Vbat by 0 %.10g", c.battery());
            }
        } else if (load instanceof DcLoad.Choke k) {
            line(out, "Lch pl lx %.10g", k.inductance());
            line(out, "Rload lx 0 %.10g", k.resistance());
        }
        line(out, ".options reltol=1e-4 abstol=1e-6 vntol=1e-5 gmin=1e-10 method=gear maxord=2");
        line(out, ".tran %.9g %.9g %.9g %.9g uic", step, stop, start, step);
        out.append("""
                .control
                run
                let idc = i(Vidc)
                let vdc = v(p)
                let pemf = -(v(na1)-v(nn))*i(Vea) - (v(nb1)-v(nn))*i(Veb) - (v(nc1)-v(nn))*i(Vec)
                let pdc = vdc*idc
                let vab2 = (v(a)-v(b))*(v(a)-v(b))
                let vbc2 = (v(b)-v(c))*(v(b)-v(c))
                let vca2 = (v(c)-v(a))*(v(c)-v(a))
                let ia2 = i(Vea)*i(Vea)
                let ib2 = i(Veb)*i(Veb)
                let ic2 = i(Vec)*i(Vec)
                meas tran idc_avg AVG idc
                meas tran vdc_avg AVG vdc
                meas tran vdc_max MAX vdc
                meas tran vab2_avg AVG vab2
                meas tran vbc2_avg AVG vbc2
                meas tran vca2_avg AVG vca2
                meas tran ia2_avg AVG ia2
                meas tran ib2_avg AVG ib2
                meas tran ic2_avg AVG ic2
                meas tran pemf_avg AVG pemf
                meas tran pdc_avg AVG pdc
                quit
                .endc
                .end
                """);
        return out.toString();
    }

    private static void line(StringBuilder out, String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    /** {@return the simulator's measures by name} */
    public static Map<String, Double> run(Path folder, String netlist) {
        try {
            Path file = Files.writeString(folder.resolve("bridge.cir"), netlist, StandardCharsets.UTF_8);
            Path log = folder.resolve("bridge.log");
            Process process = new ProcessBuilder("ngspice", "-b", file.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("the simulator did not end");
            }
            String text = Files.readString(log, StandardCharsets.ISO_8859_1);
            Map<String, Double> measures = new HashMap<>();
            Matcher found = MEASURE.matcher(text);
            while (found.find()) {
                measures.put(found.group(1), Double.parseDouble(found.group(2)));
            }
            if (!measures.containsKey("pdc_avg")) {
                throw new AssertionError("the simulator gave no measures:\n" + text);
            }
            return measures;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
