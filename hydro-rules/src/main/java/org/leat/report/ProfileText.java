package org.leat.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.leat.check.Report;
import org.leat.plant.cases.PressureProfile;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;

/** The pressures along the pipe, for a person. */
final class ProfileText {

    private final Wording wording;

    ProfileText(Wording wording) {
        this.wording = wording;
    }

    List<String> lines(Report report, int width) {
        PressureProfile profile = report.profile();
        if (profile.points().isEmpty()) {
            return List.of();
        }
        Table table = new Table();
        table.row("point", "distance", "elevation", "standing", "running", "highest", "lowest", "rating, hottest wall");
        for (PressureProfile.Point point : profile.points()) {
            table.row(
                    PlainText.of(point.at()),
                    UsualUnits.show(point.distance(), QuantityKind.LENGTH, "m", 3),
                    UsualUnits.show(point.elevation(), QuantityKind.LENGTH, "m", 3),
                    bar(point.standing()),
                    bar(point.running()),
                    bar(point.highest()),
                    bar(point.lowest()),
                    bar(point.ratingHot()));
        }
        List<String> lines = new ArrayList<>(table.lines(width));
        if (profile.highestDuring() != null && profile.lowestDuring() != null) {
            String how = profile.rejoined() ? ", as the water column, having parted, rejoins" : "";
            lines.add("highest in " + PlainText.of(profile.highestDuring()) + how + ", lowest in "
                    + PlainText.of(profile.lowestDuring()));
        }
        Amount.Unknown parts = profile.parts();
        if (parts != null) {
            lines.add("not the last word: " + wording.phrase(parts.reason()));
        }
        return lines;
    }

    private static String bar(Amount amount) {
        return amount instanceof Amount.Known known ? bar(known.value()) : "unknown";
    }

    /** Two decimals, a hundredth of a bar is ten centimetres of water; but no more than four digits in all. */
    private static String bar(double pascal) {
        double size = Math.abs(pascal) / 1e5;
        int decimals = size < 99.995 ? 2 : size < 999.95 ? 1 : 0;
        return BigDecimal.valueOf(pascal / 1e5)
                        .setScale(decimals, RoundingMode.HALF_EVEN)
                        .toPlainString()
                + " bar";
    }
}
