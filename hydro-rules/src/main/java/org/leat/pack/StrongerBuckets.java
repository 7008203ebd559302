package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leat.catalogue.RunnerMaterial;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Outcome;
import org.leat.check.WayOut;
import org.leat.design.Runner;
import org.leat.pack.Search.Candidate;

/** Buckets of another make as a way out; the rule says {@code stronger}. */
final class StrongerBuckets {

    private StrongerBuckets() {}

    /** {@return the first tabled material that holds, printed ones before cast and machined ones} */
    static Optional<WayOut> material(LegacyRule rule, Judgement j, Outcome failure) {
        return Search.first(
                rule,
                j,
                failure,
                RunnerMaterial.all().stream()
                        .map(material -> new Candidate(
                                "stronger", edits(j, material), List.of(Arg.of("material", material.name())))));
    }

    private static List<Edit> edits(Judgement j, RunnerMaterial material) {
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit(BucketMaterial.PATH, material.name()));
        edits.add(new Edit("/runner/buckets/making", material.making()));
        Runner runner = j.design().runner();
        if (runner != null && runner.buckets() != null && runner.buckets().strength() != null) {
            edits.add(new Edit("/runner/buckets/strength", null));
        }
        return edits;
    }
}
