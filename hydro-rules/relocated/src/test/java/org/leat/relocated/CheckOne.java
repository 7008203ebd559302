package org.leat.relocated;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.file.DesignWriter;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.plant.Screening;

/** Reads, solves, checks and writes a design: what an engine's job would do. */
final class CheckOne {

    private CheckOne() {}

    public static void main(String[] files) {
        Reading reading = DesignReader.read(Path.of(files[0]));
        Report report = Checker.of(List.of(new BuiltInPack())).check(reading);
        Plant plant = Plant.of(Objects.requireNonNull(reading.design()));
        Screening.Solved solved = (Screening.Solved) Screening.near(plant).solve(plant.design());
        System.out.println(report.failures(Level.ERROR) + " errors, "
                + Math.round(solved.sets().get(0).batteryPower()) + " W, "
                + DesignWriter.json(plant.design()).length() + " characters");
    }
}
