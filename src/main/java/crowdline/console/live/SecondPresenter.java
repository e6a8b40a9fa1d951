package crowdline.console.live;

import crowdline.console.live.Turns.OthersTurn;
import crowdline.console.live.Turns.Part;
import crowdline.console.live.next.NextView;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.live.say.SayView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.patter.Speaking;
import crowdline.show.Interpreting;
import crowdline.show.Speaker;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.speech.pace.Interpreted;
import crowdline.speech.plain.Breaths;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Decides what the second window shows. Pure. */
public final class SecondPresenter {
    /** The longest line a breath may fill, in letters, as in Live. */
    private static final int BREATH_CHARS = 54;

    private final LiveMoment moment;
    private final LiveView live;
    private final ShowLookup words;
    private final @Nullable String reader;
    private final Turns turns;

    private SecondPresenter(LiveMoment moment, LiveView live, ShowLookup words, @Nullable String reader) {
        this.moment = moment;
        this.live = live;
        this.words = words;
        this.reader = reader;
        turns = new Turns(moment, live.handles(), words);
    }

    /**
     * What is seen of a moment: nothing that only a key could take.
     *
     * @param live what Live shows of it
     * @param reader the name of who sits before the window; null, or nobody of the show, for anybody who is not at the console
     */
    public static SecondView of(LiveMoment moment, LiveView live, ShowLookup words, @Nullable String reader) {
        Optional<Speaker> known = words.show().speakers().find(reader);
        return new SecondPresenter(moment, live, words, known.map(Speaker::name).orElse(null)).view();
    }

    private SecondView view() {
        NextView next = live.next();
        NextView read = new NextView(
                next.caption(),
                next.in(),
                next.swapped(),
                next.where(),
                next.name(),
                next.call(),
                next.later(),
                List.of());
        return new SecondView(
                new LiveView(live.strip(), live.now(), say(), read, live.incident(), List.of(), Handles.NONE, null),
                turn(),
                then(),
                words.show().speakers().all().stream().map(Speaker::name).toList(),
                reader);
    }

    private Mark turn() {
        if (live.incident() != null) {
            return new Mark(Form.STOP, Tone.ALARM, "Incident: say nothing");
        }
        OthersTurn readers = turns.of(this::readers).orElse(null);
        return readers == null
                ? new Mark(
                        Form.RING,
                        Tone.CALM,
                        turns.others()
                                        .filter(OthersTurn::now)
                                        .map(OthersTurn::name)
                                        .orElse("The commentator")
                                + " speaks")
                : new Mark(Form.UP, Tone.CAUTION, you(readers.now() ? "speak now" : "speak next"));
    }

    /** By name where somebody sits there who has one. */
    private String you(String does) {
        return reader == null ? "You " + does : reader + ", you " + does;
    }

    /** What the reader says of a remark: all of it, or its other language; a reader nobody has named says everybody's. */
    private Optional<Part> readers(Remark remark) {
        return words.other(remark)
                .filter(name -> reader == null || reader.equals(name))
                .map(Part::all)
                .or(() -> translated(remark, live.handles().sayShort())
                        .map(said -> new Part(said.speaker(), otherFromS(remark))));
    }

    /** The other language of a remark, if it is the reader's to say; a reader nobody has named says none. */
    private Optional<Interpreted> translated(Remark remark, boolean shortForm) {
        return words.interpreted(remark, shortForm)
                .filter(said -> said.speaker().equals(reader));
    }

    /** When the other language of the remark on the screen begins, seconds of the session. */
    private double otherFromS(Remark remark) {
        if (words.voices().interpreting() == Interpreting.BESIDE) {
            return Double.NEGATIVE_INFINITY;
        }
        boolean shortForm = live.handles().sayShort();
        return startS(remark) + words.voices().first(remark, shortForm).seconds();
    }

    private double startS(Remark remark) {
        Speaking speaking = moment.state().talk().speaking();
        return speaking != null && speaking.remarkId().equals(remark.id())
                ? speaking.startedAtS()
                : moment.plan()
                        .find(remark.id())
                        .map(Placed::startS)
                        .orElse(moment.now().nowS());
    }

    /** What Live shows, or the other language in its place, for who says it. */
    private SayView say() {
        return turns.here()
                .flatMap(remark -> translated(remark, live.handles().sayShort()).map(said -> say(remark, said)))
                .orElse(live.say());
    }

    private SayView say(Remark remark, Interpreted said) {
        double goneS = moment.now().nowS() - otherFromS(remark);
        boolean now = turns.of(this::readers).filter(OthersTurn::now).isPresent();
        double share = now && Double.isFinite(goneS)
                ? goneS / Math.max(0.1, said.time().seconds())
                : 0;
        return new SayView(
                now ? SayView.What.WORDS : SayView.What.WAITING,
                (now ? "Say now, in " : "Say next, in ") + said.words().languageName(),
                noted(Seconds.left(said.time().seconds()) + " to say", said),
                Breaths.lines(said.text(), BREATH_CHARS),
                Math.max(0, Math.min(1, share)),
                null,
                null);
    }

    private static String noted(String words, Interpreted said) {
        return said.note().isEmpty() ? words : words + ", " + said.note();
    }

    private String then() {
        Placed placed = turns.then().orElse(null);
        if (placed == null) {
            return "";
        }
        Remark remark = words.remark(placed.remarkId()).orElseThrow();
        boolean shortForm = placed.form() == RemarkForm.SHORT;
        String when = "Then, in " + Seconds.left(placed.startS() - moment.now().nowS())
                + words.other(remark).map(name -> ", " + name).orElse("");
        return translated(remark, shortForm)
                .map(said -> noted(when, said) + ": " + said.text())
                .orElseGet(() -> when + ": " + remark.words(shortForm));
    }
}
