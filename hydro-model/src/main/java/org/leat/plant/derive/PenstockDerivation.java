package org.leat.plant.derive;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.Catalogue;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.TemperatureReduction;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Fitting;
import org.leat.design.FittingKind;
import org.leat.design.Intake;
import org.leat.design.Penstock;
import org.leat.design.Section;
import org.leat.design.Sunlight;
import org.leat.design.Vent;
import org.leat.hydraulics.LossCoefficient;
import org.leat.law.Answer;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.PenstockNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.SectionNumbers.PipeNumbers;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.quantity.Celsius;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Penstock of a plant. */
final class PenstockDerivation {

    private static final String WALL_TEMPERATURE = "/penstock/highest-wall-temperature";

    private PenstockDerivation() {}

    static PenstockNumbers of(
            Design design, SiteNumbers site, WaterNumbers coldest, Catalogue catalogue, Assume assume) {
        Penstock penstock = design.penstock();
        double hottest = wallTemperature(penstock, site, assume);
        double[] elevation = SectionElevations.of(penstock.sections(), site.grossHead(), assume);
        List<SectionNumbers> sections = new ArrayList<>();
        for (int i = 0; i < penstock.sections().size(); i++) {
            Section section = penstock.sections().get(i);
            String path = ElementPath.item("/penstock/sections", penstock.sections(), i);
            PipeNumbers pipe = new PipeDerivation(path + "/pipe", hottest, coldest.temperature(), catalogue, assume)
                    .of(section.pipe());
            double loss = fittings(section, path, pipe.bore(), i == 0, catalogue, assume);
            sections.add(new SectionNumbers(
                    section.name(),
                    pipe,
                    Si.of(section.length()),
                    elevation[i],
                    elevation[i + 1],
                    loss,
                    hottest,
                    WaterDerivation.waveSpeed(pipe, coldest),
                    ValveDerivation.of(section, path, pipe.bore(), assume)));
        }
        return new PenstockNumbers(
                sections,
                ScreenDerivation.loss(design.intake()),
                fittingsRating(penstock, sections, hottest),
                Si.optional(design.intake() == null ? null : design.intake().valveClosingTime()),
                ventBelowValve(design.intake(), site));
    }

    /** At the hottest wall: joints lose strength as their material does, and the weakest material of the line decides. */
    private static Amount fittingsRating(Penstock penstock, List<SectionNumbers> sections, double hottest) {
        Amount rating = Amount.stated(penstock.ratedFittings(), "/penstock/rated-fittings");
        double lowest = 1;
        for (SectionNumbers section : sections) {
            if (section.material() != null && rating.isKnown()) {
                Answer kept = TemperatureReduction.joints(section.material(), hottest);
                if (!(kept instanceof Answer.Value share)) {
                    return Amount.of(kept, WALL_TEMPERATURE);
                }
                lowest = Math.min(lowest, share.value());
            }
        }
        return rating.times(lowest);
    }

    /** A vent that may freeze shut is none. */
    private static @Nullable Boolean ventBelowValve(@Nullable Intake intake, SiteNumbers site) {
        Vent vent = intake == null ? null : intake.vent();
        if (vent == null || (site.frost() && !Boolean.TRUE.equals(vent.frostProof()))) {
            return null;
        }
        return Boolean.TRUE.equals(vent.belowValve());
    }

    private static double wallTemperature(Penstock penstock, SiteNumbers site, Assume assume) {
        if (penstock.highestWallTemperature() != null) {
            return Si.of(penstock.highestWallTemperature());
        }
        double air = site.highestAirTemperature();
        Sunlight sunlight = penstock.sunlight();
        if (sunlight == Sunlight.BURIED) {
            double water = Math.max(site.highestWaterTemperature(), Celsius.toKelvin(20));
            return assume.sound(
                    WALL_TEMPERATURE, QuantityKind.TEMPERATURE, water, water, water + 10, "assumed/buried-wall");
        } else if (sunlight == Sunlight.OPEN) {
            double sun = Math.max(air, Celsius.toKelvin(55));
            return assume.sound(
                    WALL_TEMPERATURE, QuantityKind.TEMPERATURE, sun, sun - 5, sun + 10, "assumed/wall-in-the-sun");
        } else if (sunlight == Sunlight.SHADED) {
            return assume.sound(
                    WALL_TEMPERATURE, QuantityKind.TEMPERATURE, air, air - 5, air + 10, "assumed/shaded-wall");
        }
        return assume.placeholder(
                WALL_TEMPERATURE,
                QuantityKind.TEMPERATURE,
                air,
                Math.min(air, Celsius.toKelvin(20)),
                Math.max(air, Celsius.toKelvin(60)),
                "assumed/wall-sunlight-not-stated");
    }

    private static double fittings(
            Section section, String path, double bore, boolean first, Catalogue catalogue, Assume assume) {
        double sum = 0;
        boolean entrance = false;
        for (Fitting fitting : section.fittings()) {
            Double own = fitting.lossCoefficient();
            double k = own != null ? own : catalogue.fittingLoss(fitting.kind()).usual();
            double fittingBore = Si.of(fitting.bore(), bore);
            int count = fitting.count() == null ? 1 : fitting.count();
            sum += count * LossCoefficient.onBore(k, fittingBore, bore);
            entrance |= isEntrance(fitting.kind());
        }
        if (first && !entrance) {
            Spread sharp = catalogue.fittingLoss(FittingKind.ENTRANCE_SHARP);
            sum += assume.value(
                    path + "/fittings",
                    QuantityKind.RATIO,
                    sharp.usual(),
                    catalogue.fittingLoss(FittingKind.ENTRANCE_ROUNDED).low(),
                    catalogue.fittingLoss(FittingKind.ENTRANCE_PROJECTING).high(),
                    "assumed/entrance",
                    sharp.source(),
                    Assumption.Weight.SOUND_DEFAULT);
        }
        return sum;
    }

    private static boolean isEntrance(FittingKind kind) {
        return kind == FittingKind.ENTRANCE_SHARP
                || kind == FittingKind.ENTRANCE_PROJECTING
                || kind == FittingKind.ENTRANCE_ROUNDED;
    }
}
