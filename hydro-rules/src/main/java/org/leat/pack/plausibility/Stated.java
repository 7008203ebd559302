package org.leat.pack.plausibility;

import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import org.leat.catalogue.tables.PlausibleRange;
import org.leat.check.Judgement;
import org.leat.design.BatteryBank;
import org.leat.design.GrossHead;
import org.leat.design.Making;
import org.leat.pack.kit.DesignParts;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * A number as the design states it, with the range in which such plants have it.
 *
 * @param path of the field
 * @param range that the table has for it
 * @param value in SI
 * @param kind what it measures
 */
record Stated(String path, PlausibleRange range, double value, QuantityKind kind) {

    private static final double SECONDS_PER_HOUR = 3600;

    /** {@return every number stated, or worked out of what is stated, for which the table has a range} */
    static List<Stated> all(Judgement j) {
        List<Stated> all = new ArrayList<>();
        water(j, all);
        charging(j.design().battery(), all);
        boolean printed = DesignParts.buckets(j).making() == Making.PRINTED;
        StatedFields.of(j.design()).stream()
                .filter(stated -> printed || !stated.path().equals("/runner/buckets/strength"))
                .forEach(all::add);
        return all;
    }

    private static void water(Judgement j, List<Stated> all) {
        if (!(j.design().site().grossHead() instanceof GrossHead.Gauge)) {
            add(all, "/site/gross-head", "gross head", j.numbers().site().grossHead(), LENGTH);
        }
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        double length = sections.stream().mapToDouble(SectionNumbers::length).sum();
        add(all, "/penstock/sections", "penstock length", length, LENGTH);
        for (SectionNumbers section : sections) {
            add(all, section.path() + "/pipe", "penstock bore", section.bore(), LENGTH);
            if (section.leastWall() > 0) {
                double walls = section.leastWall() / section.outsideDiameter();
                add(all, section.path() + "/pipe", "wall over outside diameter", walls, RATIO);
            }
        }
    }

    /** The limits of charging against the size of the bank: a limit far too wide passes whatever the turbine does to it. */
    private static void charging(BatteryBank bank, List<Stated> all) {
        if (bank.chargeCurrentLimit() != null) {
            double perHour = Si.of(bank.chargeCurrentLimit()) * SECONDS_PER_HOUR / Si.of(bank.capacity());
            add(all, "/battery/charge-current-limit", "charge current over capacity per hour", perHour, RATIO);
        }
        if (bank.chargeVoltageLimit() != null) {
            double perCell = Si.of(bank.chargeVoltageLimit()) / bank.cellsInSeries();
            add(all, "/battery/charge-voltage-limit", "charge voltage over cells in series", perCell, VOLTAGE);
        }
    }

    private static void add(List<Stated> all, String path, String quantity, double value, QuantityKind kind) {
        PlausibleRange range = PlausibleRange.find(quantity).orElseThrow();
        all.add(new Stated(path, range, value, kind));
    }
}
