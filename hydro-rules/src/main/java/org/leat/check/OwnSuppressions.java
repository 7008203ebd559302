package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.ExcusedFinding;
import org.leat.file.Positions;

/** The suppressions that stand in a design's own file. */
final class OwnSuppressions {

    private OwnSuppressions() {}

    static List<Suppression> of(Design design, Positions positions) {
        List<Suppression> all = new ArrayList<>();
        for (int i = 0; i < design.suppressions().size(); i++) {
            ExcusedFinding excused = design.suppressions().get(i);
            String path = ElementPath.item("/suppressions", design.suppressions(), i);
            all.add(Suppression.of(excused, "", positions.of(path), true));
        }
        return all;
    }
}
