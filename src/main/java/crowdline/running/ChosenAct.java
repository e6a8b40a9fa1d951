package crowdline.running;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.SlotTime;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import java.util.List;
import java.util.function.DoubleFunction;

/** An act of a show chosen to be flown next. */
public final class ChosenAct {
    private ChosenAct() {}

    /** Chooses an act, in the variant that the day's cloud base allows. */
    public static DoubleFunction<LiveEvent> of(Show show, Act act) {
        Variant variant = act.variantUnder(show.air().cloudBaseFt());
        SlotTime.OnClock slot =
                new SlotTime.OnClock(show.slotStart(act), show.venue().timeZone());
        return atS -> new FlightEvent.ActChosen(
                atS, act.id(), variant.name(), ids(act, variant), transits(act, variant), null, slot);
    }

    /** Changes to another variant of the act that was chosen. */
    public static DoubleFunction<LiveEvent> inVariant(Act act, Variant variant) {
        return atS -> new FlightEvent.VariantChosen(atS, variant.name(), ids(act, variant), transits(act, variant));
    }

    private static List<String> ids(Act act, Variant variant) {
        return act.inOrder(variant).stream().map(Figure::id).toList();
    }

    private static List<String> transits(Act act, Variant variant) {
        return act.inOrder(variant).stream()
                .filter(Figure::transit)
                .map(Figure::id)
                .toList();
    }
}
