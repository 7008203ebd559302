package org.leat.choice;

import java.util.List;
import org.leat.choice.UsualParts.Machine;

/**
 * The parts of a plant that decide what it gives; all others follow from them.
 *
 * @param outside diameter of the pipe, m
 * @param sdr of the pipe
 * @param inletSdr of its first length
 * @param jets on the wheel
 * @param bores on hand, m, rising
 * @param open bore of the nozzles open as built, m
 * @param openJets how many of them
 * @param pitch diameter of the wheel, m
 * @param machine as wound for its list
 * @param turns over those of the machine as listed
 * @param cells in series
 */
record MainParts(
        double outside,
        double sdr,
        double inletSdr,
        int jets,
        List<Double> bores,
        double open,
        int openJets,
        double pitch,
        Machine machine,
        double turns,
        int cells) {

    MainParts {
        bores = List.copyOf(bores);
    }

    /** {@return the widest bore, m} */
    double widest() {
        return bores.get(bores.size() - 1);
    }

    MainParts withOpen(double bore, int count) {
        return new MainParts(outside, sdr, inletSdr, jets, bores, bore, count, pitch, machine, turns, cells);
    }

    MainParts withWheel(double diameter, Machine other, double otherTurns, int otherCells) {
        return new MainParts(
                outside, sdr, inletSdr, jets, bores, open, openJets, diameter, other, otherTurns, otherCells);
    }
}
