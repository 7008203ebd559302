package org.leat.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.AssumedValue.SensitiveVerdict;
import org.leat.check.Finding;
import org.leat.design.ElementPath;
import org.leat.file.Position;
import org.leat.file.Reading;

/** Where a finding stands and what else in the file it speaks of. */
final class SarifPlaces {

    private final SarifArtifacts artifacts;

    SarifPlaces(SarifArtifacts artifacts) {
        this.artifacts = artifacts;
    }

    /** {@return the one place of a result} */
    List<SarifModel.Location> of(Position position, String path) {
        return List.of(new SarifModel.Location(null, artifacts.at(position), logical(path), null));
    }

    /** {@return elements that the sentence names and fields that were assumed; null where there are none} */
    @Nullable
    List<SarifModel.Location> related(Finding finding, @Nullable Reading reading) {
        if (reading == null) {
            return null;
        }
        Map<String, String> spokenOf = new LinkedHashMap<>();
        for (Arg arg : finding.outcome().message().args()) {
            if (arg.value() instanceof Arg.Element element) {
                spokenOf.put(element.path(), "spoken of here");
            }
        }
        for (SensitiveVerdict assumed : finding.restsOn()) {
            spokenOf.put(assumed.field(), "assumed, because the file does not say");
        }
        spokenOf.remove(finding.outcome().path());
        spokenOf.remove(ElementPath.ROOT);
        List<SarifModel.Location> related = new ArrayList<>();
        spokenOf.forEach((path, why) -> related.add(new SarifModel.Location(
                related.size() + 1,
                artifacts.at(reading.positions().of(path)),
                logical(path),
                new SarifModel.Text(Wording.place(path) + ": " + why))));
        return related.isEmpty() ? null : related;
    }

    private static @Nullable List<SarifModel.LogicalLocation> logical(String path) {
        if (path.equals(ElementPath.ROOT)) {
            return null;
        }
        return List.of(new SarifModel.LogicalLocation(
                path.substring(path.lastIndexOf('/') + 1), path.substring(1), "property"));
    }
}
