package org.leat.pack.plausibility;

import static org.leat.quantity.QuantityKind.AREA;
import static org.leat.quantity.QuantityKind.CHARGE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.TEMPERATURE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.tables.PlausibleRange;
import org.leat.check.Judgement;
import org.leat.design.Alternator;
import org.leat.design.Cable;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.GrossHead;
import org.leat.design.OpenCircuit;
import org.leat.design.Site;
import org.leat.plant.numbers.PenstockNumbers;
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

    /** {@return every number stated for which the table has a range, from the water to the battery} */
    static List<Stated> all(Judgement j) {
        List<Stated> all = new ArrayList<>();
        site(j, all);
        penstock(j.numbers().penstock(), all);
        List<Quantity<javax.measure.quantity.Length>> open =
                j.design().nozzles().open();
        for (int i = 0; i < open.size(); i++) {
            add(all, ElementPath.item("/nozzles/open", open, i), "nozzle bore", open.get(i), LENGTH);
        }
        if (j.design().runner() != null) {
            add(
                    all,
                    "/runner/pitch-diameter",
                    "pitch diameter",
                    j.design().runner().pitchDiameter(),
                    LENGTH);
        }
        alternator(j.design().alternator(), all);
        List<Cable> cables = j.design().cables();
        for (int i = 0; i < cables.size(); i++) {
            String path = ElementPath.item("/cables", cables, i);
            add(all, path + "/length", "cable length", cables.get(i).length(), LENGTH);
            add(
                    all,
                    path + "/conductor/area",
                    "conductor area",
                    cables.get(i).conductor().area(),
                    AREA);
        }
        battery(j.design(), all);
        return all;
    }

    private static void site(Judgement j, List<Stated> all) {
        Site site = j.design().site();
        if (site.grossHead() instanceof GrossHead.Gauge gauge) {
            add(
                    all,
                    "/site/gross-head/pressure",
                    "gauge pressure",
                    gauge.pressure().value(),
                    PRESSURE);
        } else {
            add(all, "/site/gross-head", "gross head", j.numbers().site().grossHead(), LENGTH);
        }
        add(all, "/site/altitude", "altitude", site.altitude(), LENGTH);
        if (site.waterTemperature() != null) {
            add(
                    all,
                    "/site/water-temperature/lowest",
                    "water temperature",
                    site.waterTemperature().lowest(),
                    TEMPERATURE);
            add(
                    all,
                    "/site/water-temperature/highest",
                    "water temperature",
                    site.waterTemperature().highest(),
                    TEMPERATURE);
        }
        if (site.airTemperature() != null) {
            add(
                    all,
                    "/site/air-temperature/lowest",
                    "ambient temperature",
                    site.airTemperature().lowest(),
                    TEMPERATURE);
            add(
                    all,
                    "/site/air-temperature/highest",
                    "ambient temperature",
                    site.airTemperature().highest(),
                    TEMPERATURE);
        }
    }

    private static void penstock(PenstockNumbers penstock, List<Stated> all) {
        double length =
                penstock.sections().stream().mapToDouble(SectionNumbers::length).sum();
        add(all, "/penstock/sections", "penstock length", length, LENGTH);
        for (SectionNumbers section : penstock.sections()) {
            add(all, section.path() + "/pipe", "penstock bore", section.bore(), LENGTH);
            if (section.leastWall() > 0) {
                double walls = section.leastWall() / section.outsideDiameter();
                add(all, section.path() + "/pipe", "wall over outside diameter", walls, RATIO);
            }
        }
    }

    private static void alternator(Alternator alternator, List<Stated> all) {
        if (alternator.openCircuit() instanceof OpenCircuit.VoltsAtSpeed reading) {
            String at = "/alternator/open-circuit";
            add(all, at + "/voltage", "no-load line voltage", reading.voltage().value(), VOLTAGE);
            add(all, at + "/speed", "speed", reading.speed(), ROTATIONAL_SPEED);
        }
        if (alternator.polePairs() != null) {
            add(all, "/alternator/pole-pairs", "pole pairs", alternator.polePairs(), RATIO);
        }
    }

    private static void battery(Design design, List<Stated> all) {
        add(all, "/battery/cells-in-series", "cells in series", design.battery().cellsInSeries(), RATIO);
        add(all, "/battery/capacity", "battery capacity", design.battery().capacity(), CHARGE);
    }

    private static void add(
            List<Stated> all, String path, String quantity, @Nullable Quantity<?> value, QuantityKind kind) {
        if (value != null) {
            add(all, path, quantity, Si.of(value), kind);
        }
    }

    private static void add(List<Stated> all, String path, String quantity, double value, QuantityKind kind) {
        PlausibleRange.find(quantity).ifPresent(range -> all.add(new Stated(path, range, value, kind)));
    }
}
