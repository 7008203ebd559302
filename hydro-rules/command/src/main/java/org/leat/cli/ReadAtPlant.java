package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import org.leat.design.Design;
import org.leat.file.Filled;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.PlantReadings;
import org.leat.readings.TakenReadings;

/**
 * A plant that can be solved, and what was read on it.
 *
 * @param design as its file says
 * @param file of the readings
 * @param readings in it
 * @param expected of the plant
 * @param taken readings that have a place on the plant
 */
record ReadAtPlant(
        Reading design,
        Filled<PlantReadings> file,
        PlantReadings readings,
        Expectations expected,
        TakenReadings taken) {

    /** What a command makes of it. */
    interface Use {
        /** {@return the exit code} */
        int of(ReadAtPlant read) throws IOException;
    }

    /**
     * {@return the exit code: of what is made of both files, or of what cannot be made of them}
     *
     * @param err where it is told what is wrong with them
     */
    static int read(String designFile, String readingsFile, PrintWriter err, Use use) throws IOException {
        Reading design = PlantFile.read(designFile);
        Filled<PlantReadings> file = Tables.read(PlantReadings.class, "sets", readingsFile);
        Design built = design.design();
        PlantReadings readings = file.record();
        PlantFile.tell(design.problems(), err);
        PlantFile.tell(file.problems(), err);
        if (built == null || readings == null) {
            return ExitCode.UNREADABLE;
        }
        Plant plant = PlantFile.solvable(built, err);
        if (plant == null) {
            return ExitCode.NOT_JUDGED;
        }
        Expectations expected = Expectations.of(plant);
        TakenReadings taken = TakenReadings.of(readings, expected);
        boolean misplaced = PlantFile.tell(taken, file, err);
        if (misplaced) {
            return ExitCode.UNREADABLE;
        }
        PlantFile.tellSetsNotNamed(readings, expected, file, err);
        return use.of(new ReadAtPlant(design, file, readings, expected, taken));
    }
}
