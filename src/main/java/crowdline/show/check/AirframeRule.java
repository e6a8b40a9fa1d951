package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
import crowdline.show.bounds.Quantity;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The numbers of an airframe go together, and with the speeds it is asked to fly. */
final class AirframeRule implements ShowRule {
    /** Above this an aircraft flies: below it may be rolling or climbing away. Feet. */
    private static final double FLYING_FT = 100;
    /** How far below the stalling speed counts: a wing in ground effect or a light load is no slip. */
    private static final double SHARE_OF_STALL = 0.9;

    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        for (int i = 0; i < show.airframes().size(); i++) {
            if (show.airframes().get(i) instanceof Airframe airframe) {
                proportions(airframe, "airframes[" + i + "].", findings);
            }
        }
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            int at = a;
            show.airframe(act.airframe()).ifPresent(airframe -> act(act, at, airframe, findings));
        }
    }

    private static void proportions(Airframe airframe, String path, Consumer<Finding> findings) {
        for (Proportion proportion : Proportion.ALL) {
            if (!proportion.isPlausible(airframe)) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "out-of-proportion",
                        proportion.sentence(airframe),
                        path + proportion.where()));
            }
        }
    }

    private static void act(Act act, int a, Airframe airframe, Consumer<Finding> findings) {
        Placing entry = act.entry();
        if (entry != null) {
            placing(entry, At.act(a) + ".entry", airframe, findings);
        }
        for (int v = 0; v < act.variants().size(); v++) {
            Placing own = act.variants().get(v).entry();
            if (own != null) {
                placing(own, At.variant(a, v) + ".entry", airframe, findings);
            }
        }
        for (int f = 0; f < act.figures().size(); f++) {
            Figure figure = act.figures().get(f);
            Placing exit = figure.exit();
            if (exit != null) {
                placing(exit, At.figure(a, f) + ".exit", airframe, findings);
            }
            Double minEntryKt = figure.minEntryKt();
            if (minEntryKt != null && minEntryKt > airframe.neverExceedKt()) {
                tooFast(Quantity.MIN_ENTRY_KT, minEntryKt, At.figure(a, f), airframe, findings);
            }
            elements(figure.elements(), At.figure(a, f), airframe, findings);
        }
    }

    private static void elements(
            @Nullable List<Element> elements, String path, Airframe airframe, Consumer<Finding> findings) {
        for (int e = 0; elements != null && e < elements.size(); e++) {
            String here = path + ".elements[" + e + "]";
            if (elements.get(e) instanceof Element.Reposition to) {
                speed(to.kt(), to.heightFt(), here, airframe, findings);
            } else if (elements.get(e) instanceof Element.Line line
                    && line.until() == Element.Until.KNOTS
                    && line.value() > airframe.neverExceedKt()) {
                tooFast(Quantity.LINE_TO_KT, line.value(), here, airframe, findings);
            }
        }
    }

    private static void placing(Placing placing, String path, Airframe airframe, Consumer<Finding> findings) {
        speed(placing.kt(), placing.heightFt(), path, airframe, findings);
    }

    private static void speed(double kt, double heightFt, String path, Airframe airframe, Consumer<Finding> findings) {
        double stallKt = airframe.stallKt();
        if (heightFt > FLYING_FT && kt < SHARE_OF_STALL * stallKt) {
            findings.accept(new Finding(
                    Severity.WARNING,
                    "slower-than-the-stall",
                    "the kt is " + Quantity.written(kt) + " at " + Quantity.written(heightFt) + " ft; "
                            + Written.quoted(airframe.id()) + " stalls at about " + Math.round(stallKt)
                            + " kt by its massKg, wingAreaM2 and maxLiftUpright"
                            + hint(Quantity.PLACE_KT, kt, stallKt, airframe.neverExceedKt()),
                    path + ".kt"));
        } else if (kt > airframe.neverExceedKt()) {
            tooFast(Quantity.PLACE_KT, kt, path, airframe, findings);
        }
    }

    private static void tooFast(
            Quantity quantity, double kt, String path, Airframe airframe, Consumer<Finding> findings) {
        findings.accept(new Finding(
                Severity.WARNING,
                "faster-than-never-exceed",
                "the " + quantity.key() + " is " + Quantity.written(kt) + "; the neverExceedKt of "
                        + Written.quoted(airframe.id()) + " is " + Quantity.written(airframe.neverExceedKt())
                        + hint(quantity, kt, airframe.stallKt(), airframe.neverExceedKt()),
                path + "." + quantity.key()));
    }

    private static String hint(Quantity quantity, double kt, double stallKt, double neverExceedKt) {
        String slip = Slip.hint(quantity, kt, meant -> meant >= stallKt && meant <= neverExceedKt);
        return slip.isEmpty() ? "; check both" : slip;
    }
}
