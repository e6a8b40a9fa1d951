package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.WindAt;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.bounds.Quantity;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Remark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Every number of a show, with what it is and where it stands in the file. */
final class ShowNumbers {
    private final Visitor visitor;

    /** Told of one number after the other. */
    interface Visitor {
        void see(Quantity quantity, double value, String path);
    }

    private ShowNumbers(Visitor visitor) {
        this.visitor = visitor;
    }

    static void visit(Show show, Visitor visitor) {
        ShowNumbers numbers = new ShowNumbers(visitor);
        numbers.venue(show.venue());
        numbers.air(show.air());
        for (int i = 0; i < show.airframes().size(); i++) {
            if (show.airframes().get(i) instanceof Airframe airframe) {
                numbers.airframe(airframe, "airframes[" + i + "]");
            }
        }
        for (int a = 0; a < show.acts().size(); a++) {
            numbers.act(show.acts().get(a), a);
        }
        numbers.remarks(show.remarks(), "remarks");
        for (int i = 0; i < show.figures().size(); i++) {
            CatalogueEntry entry = show.figures().get(i);
            numbers.see(Quantity.MIN_ENTRY_KT, entry.minEntryKt(), "figures[" + i + "]");
            numbers.elements(entry.elements(), "figures[" + i + "]");
        }
    }

    private void see(Quantity quantity, @Nullable Double value, String parent) {
        if (value != null) {
            visitor.see(quantity, value, parent + "." + quantity.key());
        }
    }

    private void venue(Venue venue) {
        see(Quantity.LAT_DEG, venue.latDeg(), "venue");
        see(Quantity.LON_DEG, venue.lonDeg(), "venue");
        see(Quantity.ELEVATION_FT, venue.elevationFt(), "venue");
        see(Quantity.AXIS_BEARING_DEG, venue.axisBearingDeg(), "venue");
        see(Quantity.CROWD_TO_LINE_M, venue.crowdToLineM(), "venue");
        see(Quantity.BASE_FT, venue.limits().baseFt(), "venue.limits");
        see(Quantity.CEILING_FT, venue.limits().ceilingFt(), "venue.limits");
        see(Quantity.HALF_LENGTH_M, venue.limits().halfLengthM(), "venue.limits");
        see(Quantity.DEPTH_M, venue.limits().depthM(), "venue.limits");
    }

    private void air(DayAir air) {
        see(Quantity.QNH_HPA, air.qnhHpa(), "air");
        see(Quantity.TEMPERATURE_C, air.temperatureC(), "air");
        see(Quantity.WIND_FROM_DEG, air.windFromDeg(), "air");
        see(Quantity.WIND_KT, air.windKt(), "air");
        see(Quantity.CLOUD_BASE_FT, air.cloudBaseFt(), "air");
        for (int i = 0; i < air.windsAloft().size(); i++) {
            WindAt wind = air.windsAloft().get(i);
            see(Quantity.ALOFT_FT, wind.heightFt(), "air.windsAloft[" + i + "]");
            see(Quantity.ALOFT_FROM_DEG, wind.fromDeg(), "air.windsAloft[" + i + "]");
            see(Quantity.ALOFT_KT, wind.kt(), "air.windsAloft[" + i + "]");
        }
    }

    private void airframe(Airframe a, String path) {
        see(Quantity.MASS_KG, a.massKg(), path);
        see(Quantity.WING_AREA_M2, a.wingAreaM2(), path);
        see(Quantity.SPAN_M, a.spanM(), path);
        see(Quantity.LENGTH_M, a.lengthM(), path);
        if (a.engine() instanceof Engine.Propeller propeller) {
            see(Quantity.POWER_KW, propeller.powerKw(), path);
            see(Quantity.PROPELLER_DIAMETER_M, propeller.diameterM(), path);
            see(Quantity.PROPELLER_RPM, propeller.rpm(), path);
        } else if (a.engine() instanceof Engine.Jet jet) {
            see(Quantity.THRUST_KN, jet.thrustKn(), path);
            see(Quantity.REHEAT_KN, jet.reheatKn(), path);
        }
        see(Quantity.ZERO_LIFT_DRAG, a.zeroLiftDrag(), path);
        see(Quantity.INDUCED_DRAG_FACTOR, a.inducedDragFactor(), path);
        see(Quantity.MAX_LIFT_UPRIGHT, a.maxLiftUpright(), path);
        see(Quantity.MAX_LIFT_INVERTED, a.maxLiftInverted(), path);
        see(Quantity.ROLL_RATE_DEG_PER_S, a.rollRateDegPerS(), path);
        see(Quantity.ROLL_RATE_KT, a.rollRateKt(), path);
        see(Quantity.FLICK_RATE_DEG_PER_S, a.flickRateDegPerS(), path);
        see(Quantity.SPIN_RATE_DEG_PER_S, a.spinRateDegPerS(), path);
        see(Quantity.SPIN_DESCENT_FT_PER_TURN, a.spinDescentFtPerTurn(), path);
        see(Quantity.PIVOT_S, a.pivotS(), path);
        see(Quantity.TUMBLE_RATE_DEG_PER_S, a.tumbleRateDegPerS(), path);
        see(Quantity.LIMIT_POSITIVE_G, a.limitPositiveG(), path);
        see(Quantity.LIMIT_NEGATIVE_G, a.limitNegativeG(), path);
        see(Quantity.NEVER_EXCEED_KT, a.neverExceedKt(), path);
    }

    private void act(Act act, int a) {
        see(Quantity.SLOT_MINUTES, act.slotMinutes(), At.act(a));
        Placing entry = act.entry();
        if (entry != null) {
            placing(entry, At.act(a) + ".entry");
        }
        for (int v = 0; v < act.variants().size(); v++) {
            see(Quantity.MIN_CLOUD_BASE_FT, act.variants().get(v).minCloudBaseFt(), At.variant(a, v));
            Placing own = act.variants().get(v).entry();
            if (own != null) {
                placing(own, At.variant(a, v) + ".entry");
            }
        }
        for (int f = 0; f < act.figures().size(); f++) {
            figure(act.figures().get(f), At.figure(a, f));
        }
        remarks(act.remarks(), At.act(a) + ".remarks");
    }

    private void placing(Placing p, String path) {
        see(Quantity.PLACE_ALONG_M, p.alongM(), path);
        see(Quantity.PLACE_AWAY_M, p.awayM(), path);
        see(Quantity.PLACE_HEIGHT_FT, p.heightFt(), path);
        see(Quantity.PLACE_KT, p.kt(), path);
    }

    private void figure(Figure figure, String path) {
        see(Quantity.DURATION_S, figure.durationS(), path);
        see(Quantity.MIN_ENTRY_KT, figure.minEntryKt(), path);
        Asked asked = figure.asked();
        if (asked != null) {
            asked(asked, path + ".asked");
        }
        Placing exit = figure.exit();
        if (exit != null) {
            placing(exit, path + ".exit");
        }
        List<Element> elements = figure.elements();
        if (elements != null) {
            elements(elements, path);
        }
        for (int q = 0; q < figure.quiets().size(); q++) {
            see(Quantity.QUIET_FROM_S, figure.quiets().get(q).fromS(), path + ".quiets[" + q + "]");
            see(Quantity.QUIET_TO_S, figure.quiets().get(q).toS(), path + ".quiets[" + q + "]");
        }
        remarks(figure.remarks(), path + ".remarks");
    }

    private void asked(Asked asked, String path) {
        see(Quantity.ASKED_COUNT, asked.count(), path);
        see(Quantity.PLACE_ALONG_M, asked.alongM(), path);
        see(Quantity.PLACE_HEIGHT_FT, asked.heightFt(), path);
        see(Quantity.PLACE_KT, asked.kt(), path);
        see(Quantity.ASKED_SECONDS, asked.seconds(), path);
        see(Quantity.ASKED_BEGINS_S, asked.beginsS(), path);
    }

    private void remarks(List<Remark> remarks, String path) {
        for (int r = 0; r < remarks.size(); r++) {
            see(Quantity.EARLIEST_S, remarks.get(r).earliestS(), path + "[" + r + "]");
            see(Quantity.LATEST_S, remarks.get(r).latestS(), path + "[" + r + "]");
            see(Quantity.WEIGHT, remarks.get(r).weight(), path + "[" + r + "]");
        }
    }

    private void elements(List<Element> elements, String path) {
        for (int e = 0; e < elements.size(); e++) {
            element(elements.get(e), path + ".elements[" + e + "]");
        }
    }

    private void element(Element element, String path) {
        if (element instanceof Element.Line line) {
            Quantity until = line.until().quantity();
            if (until != null) {
                see(until, line.value(), path);
            }
            for (int m = 0; m < line.middle().size(); m++) {
                element(line.middle().get(m), path + ".middle[" + m + "]");
            }
        } else if (element instanceof Element.Arc arc) {
            see(Quantity.ARC_DEGREES, arc.degrees(), path);
            see(Quantity.ARC_TO_PATH_DEG, arc.toPathDeg(), path);
            Quantity sized = arc.size().quantity();
            if (sized != null) {
                see(sized, arc.value(), path);
            }
            see(Quantity.ARC_TOP_SHARE, arc.topShare(), path);
        } else if (element instanceof Element.Roll roll) {
            see(Quantity.ROLL_DEGREES, roll.degrees(), path);
            see(Quantity.ROLL_SECONDS, roll.seconds(), path);
            if (roll.style() == Element.RollStyle.HESITATION) {
                see(Quantity.POINTS_PER_TURN, (double) roll.pointsPerTurn(), path);
                see(Quantity.PAUSE_S, roll.pauseS(), path);
            }
        } else if (element instanceof Element.Flick flick) {
            see(Quantity.FLICK_DEGREES, flick.degrees(), path);
        } else if (element instanceof Element.Spin spin) {
            see(Quantity.SPIN_TURNS, spin.turns(), path);
        } else if (element instanceof Element.HoverRoll hover) {
            see(Quantity.HOVER_SECONDS, hover.seconds(), path);
        } else if (element instanceof Element.Tumble tumble) {
            see(Quantity.TUMBLE_TURNS, tumble.turns(), path);
        } else if (element instanceof Element.Turn turn) {
            see(Quantity.TURN_DEGREES, turn.degrees(), path);
            see(Quantity.TURN_BANK_DEG, turn.bankDeg(), path);
            see(Quantity.TURN_PEAK_PATH_DEG, turn.peakPathDeg(), path);
            see(Quantity.TURN_ROLLS, turn.rolls(), path);
        } else if (element instanceof Element.Run run) {
            see(Quantity.PLACE_ALONG_M, run.alongM(), path);
            see(Quantity.PLACE_AWAY_M, run.awayM(), path);
            see(Quantity.PLACE_HEIGHT_FT, run.heightFt(), path);
            see(Quantity.PLACE_KT, run.kt(), path);
        } else if (element instanceof Element.Reposition to) {
            see(Quantity.PLACE_ALONG_M, to.alongM(), path);
            see(Quantity.PLACE_AWAY_M, to.awayM(), path);
            see(Quantity.PLACE_HEIGHT_FT, to.heightFt(), path);
            see(Quantity.PLACE_KT, to.kt(), path);
            see(Quantity.REPOSITION_BANK_DEG, to.bankDeg(), path);
        }
    }
}
