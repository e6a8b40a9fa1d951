package crowdline.console.live;

import crowdline.console.keys.Command;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.DayNow;
import crowdline.live.state.LiveState;
import crowdline.loaded.DayShow;
import crowdline.loaded.ShowLookup;
import crowdline.running.ChosenAct;
import crowdline.show.Act;
import crowdline.show.bounds.Most;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a command means that is given in the running order. */
final class OrderCommands {
    private static final double MINUTE_S = 60;
    private static final double MUCH_S = 600;
    /** Nobody reads out a longer name of an act. */
    private static final int MOST_LETTERS = 200;
    /** A name, and last in it the minutes. */
    private static final Pattern PUT_IN = Pattern.compile(
            "(?<name>.*?)[\\s,;:\u2013\u2014-]*(?<minutes>\\d{1,3}(?:[.,]\\d)?)\\s*(?:min|mins|minutes|m|')?\\.?\\s*");

    private final ShowLookup show;
    private final LiveState state;

    OrderCommands(ShowLookup show, LiveState state) {
        this.show = show;
        this.state = state;
    }

    /** @param chosenId the act the command is about, or null if none is chosen */
    Meaning meaning(Command command, @Nullable String chosenId) {
        Act act = show.act(chosenId).orElse(null);
        if (act == null) {
            return new Meaning.Nothing("No act is chosen in the running order: press R for it.");
        }
        return switch (command) {
            case ALL_LATER -> moved(fromHere(act), MINUTE_S);
            case ALL_EARLIER -> moved(fromHere(act), -MINUTE_S);
            case ALL_MUCH_LATER -> moved(fromHere(act), MUCH_S);
            case ALL_MUCH_EARLIER -> moved(fromHere(act), -MUCH_S);
            case ONE_LATER -> moved(stillToCome(List.of(act.id())), MINUTE_S);
            case ONE_EARLIER -> moved(stillToCome(List.of(act.id())), -MINUTE_S);
            case ACT_UP -> swapped(act, -1);
            case ACT_DOWN -> swapped(act, 1);
            case CANCEL_ACT ->
                LiveCommands.happens(
                        state.day().isCancelled(act.id())
                                ? atS -> new ShowEvent.ActRestored(atS, act.id())
                                : atS -> new ShowEvent.ActCancelled(atS, act.id()));
            case CHOOSE_ACT -> LiveCommands.happens(ChosenAct.of(show.show(), act));
            default -> throw new IllegalArgumentException(command + " is no command of the running order");
        };
    }

    private List<String> fromHere(Act act) {
        return stillToCome(state.day().from(act.id()));
    }

    private List<String> stillToCome(List<String> ids) {
        return ids.stream().filter(state::isStillToCome).toList();
    }

    private static Meaning moved(List<String> ids, double byS) {
        return ids.isEmpty()
                ? new Meaning.Nothing("That act has begun, so its slot can no longer be moved.")
                : LiveCommands.happens(atS -> new ShowEvent.ActsMoved(atS, ids, byS));
    }

    /** Each gets the slot of the other. */
    private Meaning swapped(Act act, int by) {
        List<String> order = state.runningOrder();
        int at = order.indexOf(act.id());
        Act other = at < 0 || at + by < 0 || at + by >= order.size()
                ? null
                : show.act(order.get(at + by)).orElse(null);
        if (other == null) {
            return new Meaning.Nothing(by < 0 ? "It is the first act already." : "It is the last act already.");
        }
        Act first = by < 0 ? other : act;
        Act second = by < 0 ? act : other;
        double apartS =
                Duration.between(DayNow.slot(state, show.show(), first), DayNow.slot(state, show.show(), second))
                                .toMillis()
                        / 1000.0;
        return LiveCommands.happens(atS -> new ShowEvent.ActsSwapped(atS, first.id(), second.id(), apartS, -apartS));
    }

    /**
     * What putting in an act means.
     *
     * @param words its name and its minutes, such as "Fly-past, 5"
     * @param afterId the act it comes after, or null if it comes first
     */
    Meaning putIn(String words, @Nullable String afterId) {
        Matcher said = PUT_IN.matcher(words);
        String name = said.matches() ? said.group("name").strip() : "";
        double minutes =
                name.isEmpty() ? 0 : Double.parseDouble(said.group("minutes").replace(',', '.'));
        if (name.isEmpty() || minutes <= 0) {
            return new Meaning.Nothing(
                    "An act needs a name and its minutes, such as: Fly-past, 5. Nothing was put in.");
        }
        if (minutes > ShowEvent.ActAdded.MOST_MINUTES) {
            return new Meaning.Nothing(String.format(
                    Locale.UK,
                    "An act that is put in takes %.0f minutes at most. Nothing was put in.",
                    ShowEvent.ActAdded.MOST_MINUTES));
        }
        if (state.runningOrder().size() >= Most.ACTS.entries()) {
            return new Meaning.Nothing("The running order has as many acts as a show can have.");
        }
        String title = name.substring(0, Math.min(name.length(), MOST_LETTERS));
        String id = DayShow.freshId(state.day());
        DoubleFunction<LiveEvent> event = atS -> new ShowEvent.ActAdded(atS, id, title, minutes, afterId);
        return LiveCommands.happens(event);
    }
}
