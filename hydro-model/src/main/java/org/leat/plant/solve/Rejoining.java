package org.leat.plant.solve;

import java.util.List;
import java.util.OptionalDouble;
import org.leat.hydraulics.ColumnSeparation;
import org.leat.hydraulics.RejoiningColumn;

/**
 * What a column that parts after a stop at the nozzles strikes with when it rejoins, by {@link RejoiningColumn}, on three grids, and
 * by the bound of {@link ColumnSeparation} where the line is one pipe and the stop is whole.
 *
 * @param sections in order; empty where the model cannot begin, as the water boils before the stop
 * @param growing whether the blows still grew when the model ended, so that a greater one may follow
 * @param bound pressure that no blow exceeds at the lowest point of the line, Pa; empty where none is known
 */
public record Rejoining(List<Peak> sections, boolean growing, OptionalDouble bound) {

    public Rejoining {
        sections = List.copyOf(sections);
    }

    /**
     * Highest pressures in a section, Pa; empty for a blow that there is not.
     *
     * @param first blow, before the column rejoins: the largest of all grids with their spread on top
     * @param after the first cavity, likewise
     * @param later blows, likewise
     * @param firstAgreed what the first blow and the one after the first cavity reach on every grid
     * @param agreed what all blows together reach on every grid
     */
    public record Peak(double first, OptionalDouble after, OptionalDouble later, double firstAgreed, double agreed) {}
}
