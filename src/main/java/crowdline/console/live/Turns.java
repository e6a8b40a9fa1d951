package crowdline.console.live;

import crowdline.console.live.row.LiveMoment;
import crowdline.live.state.Talk;
import crowdline.live.state.WhoseTurn;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.show.figure.Remark;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whose turn it is to speak, by the keys before the plan. Pure. */
final class Turns {
    private final LiveMoment moment;
    private final Handles shown;
    private final ShowLookup words;

    /**
     * @param shown what Live has on the screen
     */
    Turns(LiveMoment moment, Handles shown, ShowLookup words) {
        this.moment = moment;
        this.shown = shown;
        this.words = words;
    }

    /**
     * What somebody says of a remark.
     *
     * @param name who
     * @param fromS from when on if the remark is said now, seconds of the session
     */
    record Part(String name, double fromS) {
        /** All of the remark. */
        static Part all(String name) {
            return new Part(name, Double.NEGATIVE_INFINITY);
        }
    }

    /** Whose parts of remarks are looked at. */
    interface Parts {
        Optional<Part> of(Remark remark);
    }

    /**
     * Somebody other than who sits at the console has the turn.
     *
     * @param name who, or null if keys say so and the plan names nobody
     * @param now true if now, false if next
     */
    record OthersTurn(@Nullable String name, boolean now) {}

    /** The turn of anybody who does not sit at the console; empty while it is that of who does. */
    Optional<OthersTurn> others() {
        return of(remark -> words.other(remark).map(Part::all));
    }

    /** The turn of whoever has these parts; empty while it is not theirs. */
    Optional<OthersTurn> of(Parts parts) {
        WhoseTurn keys = moment.state().whoseTurn();
        Optional<OthersTurn> planned = keys == WhoseTurn.CONSOLE ? Optional.empty() : planned(parts);
        return keys == WhoseTurn.OTHER && planned.isEmpty() ? Optional.of(new OthersTurn(null, false)) : planned;
    }

    private Optional<OthersTurn> planned(Parts parts) {
        boolean waits = shown.sayWaits();
        Optional<Part> here = here().flatMap(parts::of);
        return here.isPresent() || waits
                ? here.map(part -> new OthersTurn(
                        part.name(), !waits && part.fromS() <= moment.now().nowS()))
                : then().flatMap(placed -> words.remark(placed.remarkId()))
                        .flatMap(parts::of)
                        .map(part -> new OthersTurn(part.name(), false));
    }

    /** The remark on the screen. */
    Optional<Remark> here() {
        return Optional.ofNullable(shown.sayId()).flatMap(words::remark);
    }

    /** What the plan has after the remark on the screen. */
    Optional<Placed> then() {
        Talk here = moment.state().talkHere();
        double nowS = moment.now().nowS();
        return moment.plan().placed().stream()
                .filter(placed -> words.remark(placed.remarkId()).isPresent()
                        && !placed.remarkId().equals(shown.sayId())
                        && !here.settled(placed)
                        && placed.startS() > nowS)
                .findFirst();
    }
}
