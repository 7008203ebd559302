package org.leat.pack.plausibility;

import static org.leat.quantity.QuantityKind.AREA;
import static org.leat.quantity.QuantityKind.CHARGE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.TEMPERATURE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import javax.measure.Quantity;
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
        StatedList all = new StatedList();
        site(j, all);
        penstock(j.numbers().penstock(), all);
        List<Quantity<javax.measure.quantity.Length>> open =
                j.design().nozzles().open();
        for (int i = 0; i < open.size(); i++) {
            all.add(ElementPath.item("/nozzles/open", open, i), "nozzle bore", open.get(i), LENGTH);
        }
        List<Quantity<javax.measure.quantity.Length>> available =
                j.design().nozzles().available();
        for (int i = 0; i < available.size(); i++) {
            all.add(ElementPath.item("/nozzles/available", available, i), "nozzle bore", available.get(i), LENGTH);
        }
        if (j.design().runner() != null) {
            all.add(
                    "/runner/pitch-diameter",
                    "pitch diameter",
                    j.design().runner().pitchDiameter(),
                    LENGTH);
        }
        alternator(j.design().alternator(), all);
        List<Cable> cables = j.design().cables();
        for (int i = 0; i < cables.size(); i++) {
            String path = ElementPath.item("/cables", cables, i);
            all.add(path + "/length", "cable length", cables.get(i).length(), LENGTH);
            all.add(
                    path + "/conductor/area",
                    "conductor area",
                    cables.get(i).conductor().area(),
                    AREA);
        }
        battery(j.design(), all);
        StatedWaterParts.add(j.design(), all);
        StatedElectricParts.add(j.design(), all);
        return all.all();
    }

    private static void site(Judgement j, StatedList all) {
        Site site = j.design().site();
        if (site.grossHead() instanceof GrossHead.Gauge gauge) {
            all.add(
                    "/site/gross-head/pressure",
                    "gauge pressure",
                    gauge.pressure().value(),
                    PRESSURE);
        } else {
            all.add("/site/gross-head", "gross head", j.numbers().site().grossHead(), LENGTH);
        }
        all.add("/site/altitude", "altitude", site.altitude(), LENGTH);
        if (site.waterTemperature() != null) {
            all.add(
                    "/site/water-temperature/lowest",
                    "water temperature",
                    site.waterTemperature().lowest(),
                    TEMPERATURE);
            all.add(
                    "/site/water-temperature/highest",
                    "water temperature",
                    site.waterTemperature().highest(),
                    TEMPERATURE);
        }
        if (site.airTemperature() != null) {
            all.add(
                    "/site/air-temperature/lowest",
                    "ambient temperature",
                    site.airTemperature().lowest(),
                    TEMPERATURE);
            all.add(
                    "/site/air-temperature/highest",
                    "ambient temperature",
                    site.airTemperature().highest(),
                    TEMPERATURE);
        }
    }

    private static void penstock(PenstockNumbers penstock, StatedList all) {
        double length =
                penstock.sections().stream().mapToDouble(SectionNumbers::length).sum();
        all.add("/penstock/sections", "penstock length", length, LENGTH);
        for (SectionNumbers section : penstock.sections()) {
            all.add(section.path() + "/pipe", "penstock bore", section.bore(), LENGTH);
            if (section.leastWall() > 0) {
                double walls = section.leastWall() / section.outsideDiameter();
                all.add(section.path() + "/pipe", "wall over outside diameter", walls, RATIO);
            }
        }
    }

    private static void alternator(Alternator alternator, StatedList all) {
        if (alternator.openCircuit() instanceof OpenCircuit.VoltsAtSpeed reading) {
            String at = "/alternator/open-circuit";
            all.add(at + "/voltage", "no-load line voltage", reading.voltage().value(), VOLTAGE);
            all.add(at + "/speed", "speed", reading.speed(), ROTATIONAL_SPEED);
        }
        if (alternator.polePairs() != null) {
            all.add("/alternator/pole-pairs", "pole pairs", alternator.polePairs(), RATIO);
        }
    }

    private static void battery(Design design, StatedList all) {
        all.add("/battery/cells-in-series", "cells in series", design.battery().cellsInSeries(), RATIO);
        all.add("/battery/capacity", "battery capacity", design.battery().capacity(), CHARGE);
    }
}
