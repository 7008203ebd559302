package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Pipe;
import org.leat.design.Section;
import org.leat.design.Sunlight;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** The hottest the pipe's wall gets against what its material is made for. */
final class PenstockTemperature implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/temperature", Level.ERROR)
            .title("hottest wall against the material's limit")
            .why("A black pipe that stands in the sun with the water shut gets far warmer than the air. Above the"
                    + " temperature its standard covers, no rating holds and it swells until it bursts.")
            .formula("highest wall temperature ≤ the material's limit")
            .judged("water standing on the hottest day")
            .source("polyethylene: EN 12201:2024 covers to 50 °C (from memory); PVC-U: ISO 1452-2 annex A, to 45 °C")
            .source("hose and other pipe: as marked or stated in the design")
            .limit("polyethylene", QuantityKind.TEMPERATURE, 50, "°C", "EN 12201:2024 (from memory)")
            .limit("pvc-u", QuantityKind.TEMPERATURE, 45, "°C", "ISO 1452-2 annex A")
            .message("cool-enough", "section")
            .message("too-hot", "section")
            .message("steel")
            .message("cover", "temperature")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Section> sections = j.design().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            outcomes.add(judge(j, sections.get(i), PipeSizes.path(j.design(), i) + "/pipe"));
        }
        return outcomes;
    }

    private static Outcome judge(Judgement j, Section section, String path) {
        double hottest = j.plant().numbers().penstock().sections().get(0).highestWallTemperature();
        Spot spot = j.at(path);
        Arg name = Arg.of("section", section.name());
        if (section.pipe() instanceof Pipe.Polyethylene) {
            return spot.compare(Comparison.atMost(hottest, j.limit("polyethylene")), "cool-enough", "too-hot", name);
        }
        if (section.pipe() instanceof Pipe.PvcU) {
            return spot.compare(Comparison.atMost(hottest, j.limit("pvc-u")), "cool-enough", "too-hot", name);
        }
        if (section.pipe() instanceof Pipe.Steel) {
            return spot.notApplicable("steel");
        }
        Quantity<Temperature> limit = section.pipe() instanceof Pipe.Hose hose
                ? hose.ratedTemperature()
                : ((Pipe.OtherPipe) section.pipe()).highestTemperature();
        if (limit == null) {
            String field = section.pipe() instanceof Pipe.Hose ? "/rated-temperature" : "/highest-temperature";
            return spot.notGiven(path + field);
        }
        return spot.compare(
                Comparison.atMost(hottest, Si.of(limit), QuantityKind.TEMPERATURE), "cool-enough", "too-hot", name);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit("/penstock/sunlight", Sunlight.BURIED));
        if (j.design().penstock().highestWallTemperature() != null) {
            edits.add(new Edit("/penstock/highest-wall-temperature", null));
        }
        double buried =
                j.with(edits).plant().numbers().penstock().sections().get(0).highestWallTemperature();
        Candidate cover =
                new Candidate("cover", edits, List.of(Arg.of("temperature", buried, QuantityKind.TEMPERATURE)));
        return Search.first(this, j, failure, Stream.of(cover)).stream().toList();
    }
}
