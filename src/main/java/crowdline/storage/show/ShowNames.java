package crowdline.storage.show;

import crowdline.show.CrowdUnits;
import crowdline.show.Interpreting;
import crowdline.show.aircraft.Engine.PropellerType;
import crowdline.show.aircraft.Engine.Turns;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element.FlickKind;
import crowdline.show.figure.Element.RollStyle;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.Element.SlideKind;
import crowdline.show.figure.Element.Way;
import crowdline.show.figure.Placing.Heading;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.ReversalWay;
import crowdline.show.figure.SpinKind;
import crowdline.storage.json.DiskNames;
import java.util.Set;

/** What is chosen from a few in a show file, by the names in {@code show-schema.json}. */
final class ShowNames {
    static final DiskNames<Way> WAY = new DiskNames<>(Way.class, way -> switch (way) {
        case PULL -> "pull";
        case PUSH -> "push";
    });

    static final DiskNames<Side> SIDE = new DiskNames<>(Side.class, side -> switch (side) {
        case LEFT -> "left";
        case RIGHT -> "right";
        case AWAY -> "away";
        case CROWD -> "crowd";
    });

    static final DiskNames<RollStyle> ROLL_STYLE = new DiskNames<>(RollStyle.class, style -> switch (style) {
        case AILERON -> "aileron";
        case SLOW -> "slow";
        case HESITATION -> "hesitation";
        case BARREL -> "barrel";
    });

    static final DiskNames<Asked.Place> PLACE = new DiskNames<>(Asked.Place.class, place -> switch (place) {
        case LEFT_END -> "left end";
        case CENTRE -> "centre";
        case RIGHT_END -> "right end";
    });

    static final DiskNames<Asked.Hand> HAND = new DiskNames<>(Asked.Hand.class, hand -> switch (hand) {
        case LEFT -> "left";
        case RIGHT -> "right";
    });

    static final DiskNames<CrowdUnits> CROWD_UNITS = new DiskNames<>(CrowdUnits.class, units -> switch (units) {
        case MILES -> "miles";
        case METRIC -> "metric";
    });

    static final DiskNames<EntrySpeed> ENTRY_SPEED = new DiskNames<>(EntrySpeed.class, speed -> switch (speed) {
        case LOOP -> "loop";
        case VERTICAL -> "vertical";
        case ROLL -> "roll";
        case PASS -> "pass";
        case FLICK -> "flick";
        case SLOW -> "slow";
    });

    static final DiskNames<ReversalWay> REVERSAL_WAY = new DiskNames<>(ReversalWay.class, way -> switch (way) {
        case UNDER -> "under";
        case OVER -> "over";
    });

    static final DiskNames<FlickKind> FLICK_KIND = new DiskNames<>(FlickKind.class, kind -> switch (kind) {
        case POSITIVE -> "positive";
        case NEGATIVE -> "negative";
    });

    static final DiskNames<SpinKind> SPIN_KIND = new DiskNames<>(SpinKind.class, kind -> switch (kind) {
        case UPRIGHT -> "upright";
        case INVERTED -> "inverted";
        case FLAT -> "flat";
        case INVERTED_FLAT -> "inverted-flat";
    });

    static final DiskNames<SlideKind> SLIDE_KIND = new DiskNames<>(SlideKind.class, kind -> switch (kind) {
        case WHEELS_DOWN -> "wheels-down";
        case WHEELS_UP -> "wheels-up";
    });

    static final DiskNames<Heading> HEADING = new DiskNames<>(Heading.class, heading -> switch (heading) {
        case RIGHT -> "right";
        case LEFT -> "left";
        case AWAY -> "away";
        case CROWD -> "crowd";
    });

    static final DiskNames<Interpreting> INTERPRETING = new DiskNames<>(Interpreting.class, when -> switch (when) {
        case AFTER -> "after";
        case BESIDE -> "beside";
    });

    static final DiskNames<RemarkKind> REMARK_KIND = new DiskNames<>(RemarkKind.class, kind -> switch (kind) {
        case DUTY -> "duty";
        case CALL -> "call";
        case EXPLANATION -> "explanation";
        case FACT -> "fact";
        case FILLER -> "filler";
    });

    static final DiskNames<Turns> PROPELLER_TURNS = new DiskNames<>(Turns.class, turns -> switch (turns) {
        case CLOCKWISE -> "clockwise";
        case ANTICLOCKWISE -> "anticlockwise";
    });

    static final DiskNames<PropellerType> PROPELLER_TYPE = new DiskNames<>(PropellerType.class, type -> switch (type) {
        case FIXED_CRUISE -> "fixed-cruise";
        case FIXED_CLIMB -> "fixed-climb";
        case CONSTANT_SPEED -> "constant-speed";
        case GEARED -> "geared";
        case TURBINE -> "turbine";
    });

    /** Every key of an airframe that something is computed from. */
    static final Set<String> AIRFRAME_KEYS = Set.of(
            "heavier",
            "stronger",
            "rollsFaster",
            "glider",
            "massKg",
            "wingAreaM2",
            "spanM",
            "lengthM",
            "powerKw",
            "propellerDiameterM",
            "propellerRpm",
            "propellerTurns",
            "propellerType",
            "thrustKn",
            "reheatKn",
            "zeroLiftDrag",
            "inducedDragFactor",
            "maxLiftUpright",
            "maxLiftInverted",
            "rollRateDegPerS",
            "rollRateKt",
            "flickRateDegPerS",
            "spinRateDegPerS",
            "spinDescentFtPerTurn",
            "pivotS",
            "tumbleRateDegPerS",
            "limitPositiveG",
            "limitNegativeG",
            "neverExceedKt");

    private ShowNames() {}
}
