package org.leat.choice;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import org.leat.design.About;
import org.leat.design.Limits;
import org.leat.file.Filled;
import org.leat.file.ProblemText;
import org.leat.file.RecordReader;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Quantities.ThermalResistance;

/**
 * Sizes of parts as they are usual: of the file {@code usual-parts.yaml} beside this class. Common practice.
 *
 * @param format version of the file format
 * @param nozzles bores, rising
 * @param jets on one wheel, rising
 * @param wheels pitch diameters, rising
 * @param machines smallest first
 * @param turns over those of the machine as listed, rising
 * @param cells in series of a bank
 * @param capacities of a bank, rising
 */
@About("Sizes of parts as they are usual")
record UsualParts(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("bores") @Limits(above = 0) List<Quantity<Length>> nozzles,
        @About("jets on one wheel") @Limits(atLeast = 1) List<Integer> jets,

        @About("pitch diameters") @Limits(above = 0) List<Quantity<Length>> wheels,

        @About("permanent-magnet machines, smallest first") List<Machine> machines,

        @About("turns of a winding over those of the machine as listed") @Limits(above = 0)
        List<Quantity<Dimensionless>> turns,

        @About("cells in series of a bank") @Limits(atLeast = 1)
        List<Integer> cells,

        @About("capacities of a bank") @Limits(above = 0) List<Quantity<ElectricCharge>> capacities) {

    UsualParts {
        nozzles = List.copyOf(nozzles);
        jets = List.copyOf(jets);
        wheels = List.copyOf(wheels);
        machines = List.copyOf(machines);
        turns = List.copyOf(turns);
        cells = List.copyOf(cells);
        capacities = List.copyOf(capacities);
    }

    /**
     * A permanent-magnet machine.
     *
     * @param size power it is usual for
     * @param voltage open, rms between leads, at {@code speed}
     * @param speed of that voltage
     * @param resistance between leads at 20 °C
     * @param inductance between leads, H
     * @param polePairs pole pairs
     * @param current it carries for long
     * @param noLoad iron and friction at {@code speed}
     * @param thermalResistance winding to air
     * @param speedLimit of rotor and bearings
     */
    @About("A permanent-magnet machine")
    record Machine(
            @About("power it is usual for") @Limits(above = 0)
            Quantity<Power> size,

            @About("open, rms between leads") @Limits(above = 0)
            Quantity<ElectricPotential> voltage,

            @About("speed of that voltage") @Limits(above = 0)
            Quantity<RotationalSpeed> speed,

            @About("resistance between leads at 20 °C") @Limits(above = 0)
            Quantity<ElectricResistance> resistance,

            @About("inductance between leads") @Limits(above = 0)
            Quantity<ElectricInductance> inductance,

            @About("pole pairs") @Limits(atLeast = 1) int polePairs,

            @About("current it carries for long") @Limits(above = 0)
            Quantity<ElectricCurrent> current,

            @About("iron and friction at that speed") @Limits(above = 0)
            Quantity<Power> noLoad,

            @About("winding to air") @Limits(above = 0) Quantity<ThermalResistance> thermalResistance,

            @About("of rotor and bearings") @Limits(above = 0)
            Quantity<RotationalSpeed> speedLimit) {}

    /** {@return the parts shipped} */
    static UsualParts shipped() {
        try (InputStream in = Objects.requireNonNull(UsualParts.class.getResourceAsStream("usual-parts.yaml"))) {
            Filled<UsualParts> read = RecordReader.read(UsualParts.class, in, "usual-parts.yaml");
            UsualParts parts = read.record();
            if (parts == null) {
                throw new IllegalStateException(
                        read.problems().stream().map(ProblemText::line).toList().toString());
            }
            return parts;
        } catch (IOException e) {
            throw new IllegalStateException(e); // a resource of this artifact is always there
        }
    }
}
