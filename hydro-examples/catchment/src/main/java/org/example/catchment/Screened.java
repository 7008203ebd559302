package org.example.catchment;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.plant.Screening;
import org.leat.plant.numbers.PlantNumbers;

/**
 * One place with one set of parts, solved and not judged.
 *
 * @param place number of the place
 * @param parts number of the set
 * @param head m
 * @param flow through the nozzles, m³/s
 * @param fullPipe whether the stream keeps the pipe full
 * @param hold whether the alternator holds the wheel
 * @param speedRatio bucket speed over jet velocity
 * @param watts at the battery's poles
 */
record Screened(
        long place,
        int parts,
        double head,
        double flow,
        boolean fullPipe,
        String hold,
        double speedRatio,
        double watts) {

    /** {@return the plant that all have in common; each process of the engine makes its own} */
    static Plant kind() {
        try (InputStream in = Objects.requireNonNull(Screened.class.getResourceAsStream("kind.yaml"))) {
            Reading reading = DesignReader.read(in.readAllBytes(), "kind.yaml");
            Design design = reading.design();
            if (design == null) {
                throw new IllegalStateException(reading.problems().toString());
            }
            return Plant.of(design);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return every set of parts at a place, in the order of the sets} */
    static List<Screened> all(Plant kind, CandidateSite place) {
        PlantNumbers there = place.with(kind.numbers());
        Screening near = Screening.near(kind).near(there);
        List<Screened> all = new ArrayList<>();
        for (int number = 0; number < PartSet.SETS; number++) {
            if (near.solve(PartSet.of(number).with(there)) instanceof Screening.Solved solved) {
                Screening.OnSet set = solved.sets().get(0);
                all.add(new Screened(
                        place.number(),
                        number,
                        place.head(),
                        set.flow(),
                        set.fullPipe(),
                        set.hold().name(),
                        set.speedRatio(),
                        set.batteryPower()));
            }
        }
        return all;
    }
}
