package crowdline.edit.act;

import crowdline.draft.DraftWords;
import crowdline.edit.Change;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.Pace;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** A first draft of what is said in an act, for whoever made one. */
public final class FirstDraft {
    private final Catalogue shipped;
    private final DraftWords words;
    private final double share;
    /** What was drafted last: most often what stood before the next edit. */
    private volatile @Nullable Blank last;

    /**
     * An act drafted as if nobody had written a word.
     *
     * @param bare the show with nothing drafted in the act
     */
    private record Blank(Show bare, Act drafted) {}

    /**
     * A draft for one speaker.
     *
     * @param share how much of an act is talk at most, 0 to 1; 0 for no words at all
     */
    public FirstDraft(Catalogue shipped, Pace pace, double share) {
        this.shipped = shipped;
        words = new DraftWords(pace, share);
        this.share = share;
    }

    /** Drafts words in every figure of an act that has none, in each variant; what is there stays. */
    public Edit act(String actId) {
        return show -> {
            Act act = Found.act(show, actId);
            return drafted(
                    show,
                    act,
                    figure -> true,
                    true,
                    "Draft the words of " + Found.quoted(act.title()),
                    "every figure that" + " there is something to say about, and time for, has words already");
        };
    }

    /** Drafts words for one figure, if nobody has written any for it; drafts that nobody has touched are written anew. */
    public Edit figure(String actId, String figureId) {
        return show -> {
            Act act = Found.act(show, actId);
            Figure figure = Found.figure(act, figureId);
            String name = Found.brief(shipped.with(show.figures()).nameOf(figure));
            if (figure.remarks().stream().anyMatch(r -> !r.draft())) {
                throw new CannotBe("Somebody has written words for " + name + " already, and a draft never takes"
                        + " their place; delete them in Words first, or add to them");
            }
            Act without = with(act, figure.withRemarks(List.of()));
            return drafted(
                    show,
                    without,
                    f -> f.id().equals(figureId),
                    false,
                    "Draft the words of " + name,
                    "there is no time for any, or nothing is known of it");
        };
    }

    /** @param floats whether what finds no place in a figure may be said anywhere in the act */
    private Change drafted(Show show, Act act, Predicate<Figure> which, boolean floats, String name, String nothing)
            throws CannotBe {
        if (!show.canBePredicted(act) || act.figures().isEmpty()) {
            throw new CannotBe(
                    "Words are drafted for what can be predicted, and this act cannot be; the check says why");
        }
        Act now = written(show, act, which, floats);
        if (now.equals(act)) {
            throw new CannotBe("There is nothing to draft: " + nothing);
        }
        return Change.of(name, show.withAct(now));
    }

    /** The act with what is drafted in those of its figures that have no words, in each variant. */
    private Act written(Show show, Act act, Predicate<Figure> which, boolean floats) {
        Act now = act;
        for (Variant variant : act.variants()) {
            Act written = words.of(show.withAct(now), now, flight(show.withAct(now), now, variant), all(show));
            for (Figure figure : now.figures()) {
                List<Remark> fresh =
                        written.figure(figure.id()).map(Figure::remarks).orElse(List.of());
                if (figure.remarks().isEmpty() && !fresh.isEmpty() && which.test(figure)) {
                    now = with(now, figure.withRemarks(fresh));
                }
            }
            now = floats ? now.withFigures(now.figures(), written.remarks()) : now;
        }
        return now;
    }

    /**
     * The edit with first drafts that follow it, in the same change: where an act is flown otherwise after it, what nobody
     * touched says what would be drafted now. What a person wrote, accepted or deleted stays so.
     */
    public Edit followed(Edit edit) {
        return show -> {
            Change change = edit.of(show);
            return new Change(change.name(), followed(show, change.show()), change.about());
        };
    }

    private Show followed(Show before, Show after) {
        Show now = after;
        for (Act act : after.acts()) {
            Act was = before.act(act.id()).orElse(null);
            if (was != null && follows(before, was, after, act)) {
                now = now.withAct(new DraftsFollow(blank(before, was), blank(now, act), now, act).in(was, act));
            }
        }
        return now;
    }

    private boolean follows(Show before, Act was, Show after, Act is) {
        return share > 0
                && DraftsFollow.isDrafted(was)
                && !DraftsFollow.isFlownAlike(before, was, after, is)
                && before.canBePredicted(was)
                && after.canBePredicted(is)
                && !is.figures().isEmpty();
    }

    /** What would be drafted if nobody had written a word. */
    private Act blank(Show show, Act act) {
        Act bare = act.withFigures(
                act.figures().stream().map(f -> f.withRemarks(List.of())).toList(),
                act.remarks().stream().filter(r -> !r.draft()).toList());
        Show with = show.withAct(bare);
        Blank known = last;
        if (known == null || !known.bare().equals(with)) {
            known = new Blank(with, written(with, bare, figure -> true, true));
            last = known;
        }
        return known.drafted();
    }

    private static Act with(Act act, Figure figure) {
        return act.withFigures(
                act.figures().stream()
                        .map(f -> f.id().equals(figure.id()) ? figure : f)
                        .toList(),
                act.remarks());
    }

    private Catalogue all(Show show) {
        return shipped.with(show.figures());
    }

    private Flight flight(Show show, Act act, Variant variant) {
        return new Predictor(show, all(show), act, variant).predict();
    }

    /** The show with words in every figure of an act that has none yet; itself where the act cannot be predicted. */
    public Show of(Show show, Act act) {
        if (share == 0 || !show.canBePredicted(act) || act.figures().isEmpty()) {
            return show;
        }
        return show.withAct(words.of(show, act, flight(show, act, act.variants().get(0)), all(show)));
    }
}
