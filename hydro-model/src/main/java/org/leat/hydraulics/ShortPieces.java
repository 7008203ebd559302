package org.leat.hydraulics;

import java.util.ArrayList;
import java.util.List;
import org.leat.law.Gravity;

/**
 * Sections that a wave runs through in less than a time, as half a step of a grid. To give such a piece a whole reach would mean a wave speed
 * far too low, hence a spring far too soft; it takes part by its inertia and its losses alone, as a length of its neighbour that
 * has the same inertia, {@code l A/A'} (equivalent length: Wylie and Streeter, ch. 3). The neighbour is the next lasting section
 * below, at the lower end the last above. The longest in time always lasts.
 */
final class ShortPieces {

    /** The sections that get reaches, with the inertia and losses of the pieces beside them. */
    final List<SurgeSection> lasting = new ArrayList<>();

    /** For each section: the lasting one it is or joins. */
    final int[] host;

    /** For each section: 0 where it lasts, −1 where it joins its host's upper end, 1 its lower end. */
    final int[] side;

    ShortPieces(List<SurgeSection> sections, double leastTime) {
        host = new int[sections.size()];
        side = new int[sections.size()];
        double longest =
                sections.stream().mapToDouble(SurgeSection::travelTime).max().orElseThrow();
        double least = Math.min(longest, leastTime);
        List<SurgeSection> waiting = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            SurgeSection s = sections.get(i);
            host[i] = lasting.size();
            if (s.travelTime() < least) {
                side[i] = -1;
                waiting.add(s);
            } else {
                lasting.add(with(s, waiting));
                waiting.clear();
            }
        }
        int last = lasting.size() - 1;
        lasting.set(last, with(lasting.get(last), waiting));
        for (int i = 0; i < host.length; i++) {
            if (host[i] > last) {
                host[i] = last;
                side[i] = 1;
            }
        }
    }

    private static SurgeSection with(SurgeSection s, List<SurgeSection> pieces) {
        double length = s.length();
        double resistance = s.resistance();
        for (SurgeSection piece : pieces) {
            length += piece.length() * s.area() / piece.area();
            resistance += piece.resistance();
        }
        double factor = resistance * 2 * Gravity.STANDARD * s.bore() * s.area() * s.area() / length;
        return pieces.isEmpty()
                ? s
                : new SurgeSection(length, s.bore(), s.waveSpeed(), factor, s.fromElevation(), s.toElevation());
    }
}
