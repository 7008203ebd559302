/**
 * What the builder chose: one immutable record per component, and the design above them. The records are at the same
 * time the table from which design files are read and written and the JSON Schema is made: component names become
 * field names, {@code @CanBeAbsent} means optional (a list is optional unless its limits ask for items),
 * and annotations carry limits and help. Uses {@code quantity} only.
 *
 * <p>For designs built in code every record has a builder, {@code PenstockBuilder.builder()} for {@link Penstock}: what
 * is not set is absent, lists are empty, and {@code build()} refuses a record that lacks what it needs.
 */
@API(status = API.Status.STABLE, since = "0.1")
@NullMarked
@RecordBuilder.Include({
    Alternative.class,
    Alternator.class,
    BatteryBank.class,
    BatteryManagement.class,
    Bearings.class,
    Buckets.class,
    Cable.class,
    ChargeRegulator.class,
    ClinometerLeg.class,
    Conductor.class,
    DumpLoad.class,
    DurationPoint.class,
    ExcusedFinding.class,
    Fitting.class,
    Gauging.class,
    GrossHead.Stated.class,
    GrossHead.Tube.class,
    GrossHead.Gauge.class,
    GrossHead.Clinometer.class,
    Hub.class,
    Installation.class,
    Intake.class,
    Inverter.class,
    Load.class,
    NoLoadLoss.class,
    NozzleChoice.class,
    NozzleSet.class,
    OpenCircuit.VoltsAtSpeed.class,
    OpenCircuit.SpeedPerVolt.class,
    Penstock.class,
    Pipe.Polyethylene.class,
    Pipe.PvcU.class,
    Pipe.Steel.class,
    Pipe.Hose.class,
    Pipe.OtherPipe.class,
    ProtectiveDevice.class,
    Rectifier.class,
    Runner.class,
    Safeguards.class,
    Safeguards.SecondGuard.class,
    SaltReading.class,
    Screen.DrilledHoles.class,
    Screen.Mesh.class,
    Screen.Bars.class,
    Section.class,
    SettlingBasin.class,
    Site.class,
    SpinDown.class,
    Stream.class,
    StreamFlow.Constant.class,
    StreamFlow.DurationCurve.class,
    StreamFlow.Months.class,
    StreamFlow.Daily.class,
    StreamFlow.Bucket.class,
    StreamFlow.Floats.class,
    StreamFlow.SaltSlug.class,
    StreamFlow.VNotchWeir.class,
    StreamFlow.RectangularWeir.class,
    TemperatureRange.class,
    VehiclePack.class,
    Vent.class,
    Ventilation.class,
    VoltageRange.class,
    Winding.class,
    WornNozzle.class
})
package org.leat.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
