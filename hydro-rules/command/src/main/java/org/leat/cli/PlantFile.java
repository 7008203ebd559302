package org.leat.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.file.Filled;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.PlantReadings;
import org.leat.readings.SetReadings;
import org.leat.readings.TakenReadings;

/** One design file, or standard input. */
final class PlantFile {

    private static final String STANDARD_INPUT = "-";

    private PlantFile() {}

    /** {@return what it says} */
    static Reading read(String name) {
        return name.equals(STANDARD_INPUT)
                ? new DesignSource(DesignSource.STANDARD_INPUT, null).read()
                : new DesignSource(name, Path.of(name)).read();
    }

    /**
     * {@return the plant of a design that was read; null where it cannot be solved, which is said}
     *
     * @param err where it is said
     */
    static @Nullable Plant solvable(Design design, PrintWriter err) {
        Plant plant = Plant.of(design);
        if (plant.unsolvable().isEmpty()) {
            return plant;
        }
        err.print("leat: the plant cannot be solved without "
                + plant.unsolvable().get(0).path() + "\n");
        return null;
    }

    /** Says what is wrong with a file, a line each. */
    static void tell(List<Problem> problems, PrintWriter err) {
        problems.forEach(problem -> err.print(ProblemText.line(problem) + "\n"));
    }

    /**
     * {@return whether a reading is of a nozzle set that the design has not} Says which readings have no place on the plant, a line
     * each.
     */
    static boolean tell(TakenReadings taken, Filled<PlantReadings> read, PrintWriter err) {
        boolean noSuchSet = false;
        for (TakenReadings.Misplaced one : taken.misplaced()) {
            err.print(read.positions().of(one.path()) + ": " + said(one) + "\n");
            noSuchSet |= one.why() == TakenReadings.Why.NO_SUCH_SET;
        }
        return noSuchSet;
    }

    /** Says which nozzles readings are taken to be of that name none, where the plant has several sets: one line. */
    static void tellSetsNotNamed(
            PlantReadings readings, Expectations expected, Filled<PlantReadings> read, PrintWriter err) {
        List<SetReadings> sets = readings.sets();
        for (int i = 0; i < sets.size() && expected.sets().size() > 1; i++) {
            if (sets.get(i).nozzles() == null) {
                err.print(read.positions().of("/sets[" + i + "]") + ": no nozzles are named; taken as of "
                        + expected.sets().get(0).name() + ", as built\n");
                return;
            }
        }
    }

    static String said(TakenReadings.Misplaced one) {
        return switch (one.why()) {
            case NO_SUCH_SET -> "the design has no such nozzle set; it has " + String.join(", ", one.choices());
            case NOT_IN_THAT_STATE -> "that is not read with the leads like that; left out";
            case GAUGE_ABOVE_FALL ->
                "the gauge would hang beyond the whole fall; its pressures are taken as at the nozzles";
            case NOT_TOLD -> "the design does not tell what that would be; left out";
        };
    }
}
