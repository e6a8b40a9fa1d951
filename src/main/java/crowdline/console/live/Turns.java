package crowdline.console.live;

import crowdline.console.live.row.LiveMoment;
import crowdline.live.state.Talk;
import crowdline.live.state.WhoseTurn;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whose turn it is to speak. Pure. */
final class Turns {
    private Turns() {}

    /**
     * Somebody other than who sits at the console has the turn.
     *
     * @param name who, or null if keys say so and the plan names nobody
     * @param now true if now, false if next
     */
    record OthersTurn(@Nullable String name, boolean now) {}

    /** The other's turn, by keys before the plan; empty while it is that of whoever sits at the console. */
    static Optional<OthersTurn> of(LiveMoment moment, Handles shown, ShowLookup words) {
        WhoseTurn keys = moment.state().whoseTurn();
        Optional<OthersTurn> planned = keys == WhoseTurn.CONSOLE ? Optional.empty() : planned(moment, shown, words);
        return keys == WhoseTurn.OTHER && planned.isEmpty() ? Optional.of(new OthersTurn(null, false)) : planned;
    }

    private static Optional<OthersTurn> planned(LiveMoment moment, Handles shown, ShowLookup words) {
        String sayId = shown.sayId();
        Optional<String> here =
                sayId == null ? Optional.empty() : words.remark(sayId).flatMap(words::other);
        return here.isPresent()
                ? here.map(name -> new OthersTurn(name, !shown.sayWaits()))
                : shown.sayWaits()
                        ? Optional.empty()
                        : then(moment, sayId, words)
                                .flatMap(placed -> words.remark(placed.remarkId()))
                                .flatMap(words::other)
                                .map(name -> new OthersTurn(name, false));
    }

    /** What the plan has after the remark on the screen. */
    static Optional<Placed> then(LiveMoment moment, @Nullable String sayId, ShowLookup words) {
        Talk here = moment.state().talkHere();
        double nowS = moment.now().nowS();
        return moment.plan().placed().stream()
                .filter(placed -> words.remark(placed.remarkId()).isPresent()
                        && !placed.remarkId().equals(sayId)
                        && !here.settled(placed)
                        && placed.startS() > nowS)
                .findFirst();
    }
}
