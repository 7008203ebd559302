package org.leat.readings;

import org.leat.readings.Channel.LoadState;

/** Reads a fault's values from the table: those of the sound plant on sets that have it not. */
final class FaultReader {

    /** Of what is read with part of the bridge broken: the tolerances of such a plant are taken from the sound one. */
    private static final double BROKEN = 0.01;

    /**
     * The same where a diode is shorted: the speed of a braked wheel goes with torque times resistance over the flux squared, of which
     * building leaves open 3 %, 4 % and twice 1.5 %.
     */
    private static final double BRAKED = 0.06;

    private final FaultTable table;
    private final FaultKind kind;
    private final int set;
    private final double[] sizes;

    /** @param set the one nozzle set that has the fault; −1 where all have */
    FaultReader(FaultTable table, FaultKind kind, int set) {
        this.table = table;
        this.kind = kind;
        this.set = set;
        this.sizes = table.row(kind, Math.max(0, set)).sizes();
    }

    int nodes() {
        return sizes.length;
    }

    double size(int node) {
        return sizes[node];
    }

    boolean isOwnBore(int node) {
        double own = table.expectations().sets().get(set).bores().get(0);
        return Math.abs(size(node) / own - 1) < 1e-9;
    }

    /** {@return one channel as the fault lets one read it} */
    At at(Channel channel) {
        int place = table.expectations().place(channel);
        boolean has = set < 0 || (channel.state() != LoadState.SHUT && sameBore(place));
        FaultTable.Row row = table.row(has ? kind : FaultKind.NOTHING, place);
        double sound = table.expectations().value(channel);
        double open = !FaultTable.stepped(kind) || channel.state() != LoadState.BUS
                ? 0
                : kind == FaultKind.DIODE_SHORTED ? BRAKED : BROKEN;
        return new At(channel, row, has, sound, open);
    }

    /** Whether a set has the nozzle in which the fault is. */
    private boolean sameBore(int place) {
        double own = table.expectations().sets().get(set).bores().get(0);
        return table.expectations().sets().get(place).bores().get(0) == own;
    }

    /**
     * One channel.
     *
     * @param channel that is read
     * @param row of the table
     * @param has whether the fault is there
     * @param sound what is read on a sound plant
     * @param open what building leaves open beside the tolerances, a share
     */
    record At(Channel channel, FaultTable.Row row, boolean has, double sound, double open) {

        private double told(int node) {
            return row.values()[has ? node : 0][channel.slot()];
        }

        /** What is not told under the fault is taken as under none, and as good as unknown. */
        double value(int node) {
            double value = told(node);
            return Double.isFinite(value) ? value : sound;
        }

        double value(Hypothesis.Point point) {
            double below = value(point.from());
            return point.share() == 0 ? below : below + point.share() * (value(point.from() + 1) - below);
        }

        double model(int node) {
            double value = told(node);
            if (!Double.isFinite(value)) {
                return Math.abs(sound);
            }
            double model = Expectations.modelUncertainty(channel, value);
            return open == 0 ? model : Math.hypot(model, open * value);
        }

        double[] moved(int node) {
            double[][] all = row.moved()[has ? node : 0];
            double[] moved = new double[all.length];
            for (int b = 0; b < all.length; b++) {
                double one = all[b][channel.slot()];
                moved[b] = Double.isFinite(one) ? one : 0;
            }
            return moved;
        }
    }
}
