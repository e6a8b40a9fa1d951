package crowdline.console.prepare.duty;

import crowdline.console.prepare.duty.ThingCard.Field;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.edit.day.AskedDuties;
import crowdline.edit.day.GapPieces;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import java.time.LocalTime;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.jspecify.annotations.Nullable;

/** The cards of what is said on the day besides the acts: a duty, and a piece for a gap. */
final class ThingCards {
    private static final String BETWEEN = "Gaps only";
    private static final String ALSO = "Acts too";
    private static final String DUTIES =
            "Gaps are between acts. If you leave these empty, it is due by the end of the day, with a quarter of an"
                    + " hour between times. What must be said before an act is no longer asked for once that act has"
                    + " begun.";
    private static final String PIECES =
            "An empty line separates the parts; Live shows them one after another. A speaker\u2019s name and a colon"
                    + " before a"
                    + " part: who says it. [30 s] after a question: how long its answer takes. A line with [fr] before it,"
                    + " or [fr, and a name]: the part in French.";

    private ThingCards() {}

    /** One duty of the day: its words, how often and when. */
    static ThingCard duty(Tools tools, Supplier<String> chosen) {
        ThingCard card = new ThingCard(tools, "Duty", DUTIES, chosen);
        ShowForm form = card.form();
        JTextArea words = form.area(
                "What must be said", 4, duty(card, Remark::text), typed -> AskedDuties.words(card.shown(), typed));
        JTextField shorter = form.line(
                "The same in short",
                duty(card, Remark::shortText),
                typed -> AskedDuties.shortWords(card.shown(), typed));
        JTextField times = form.line(
                "How often",
                asked(card, d -> Integer.toString(d.times())),
                typed -> AskedDuties.times(card.shown(), typed));
        JTextField apart = form.line(
                "Minutes apart",
                asked(card, d -> Numbers.text(d.apartMinutes())),
                typed -> AskedDuties.apart(card.shown(), typed));
        JTextField by =
                form.line("The last by", asked(card, ThingCards::hour), typed -> AskedDuties.by(card.shown(), typed));
        var where = form.choice(
                "Where",
                List.of(BETWEEN, ALSO),
                asked(card, d -> d.inActs() ? ALSO : BETWEEN),
                typed -> AskedDuties.inActs(card.shown(), typed.equals(ALSO)));
        card.words("What must be said", words);
        card.row(new Field("The same in short", shorter));
        card.row(new Field("How often", times), new Field("Minutes apart", apart), new Field("The last by", by));
        card.row(
                new Field("Where", where),
                act(
                        card,
                        tools,
                        "After the act",
                        asked(card, DutyTimes::afterAct),
                        id -> AskedDuties.after(card.shown(), id)),
                act(
                        card,
                        tools,
                        "Before the act",
                        asked(card, DutyTimes::beforeAct),
                        id -> AskedDuties.before(card.shown(), id)));
        card.beginsWith(words);
        return card;
    }

    /** One piece for a gap: what it is, which act it leads up to, who says it, and its parts. */
    static ThingCard piece(Tools tools, Supplier<String> chosen) {
        ThingCard card = new ThingCard(tools, "Piece", PIECES, chosen);
        ShowForm form = card.form();
        JTextField title = form.line(
                "Title of the piece", piece(card, Piece::title), typed -> GapPieces.rename(card.shown(), typed));
        JTextArea parts = form.area(
                "Its parts", 10, piece(card, GapPieces::typed), typed -> GapPieces.parts(card.shown(), typed));
        card.row(new Field("What it is", title));
        card.row(
                act(
                        card,
                        tools,
                        "Leads up to the act",
                        piece(card, Piece::beforeAct),
                        id -> GapPieces.before(card.shown(), id)),
                card.choice(
                        "Said by",
                        ShowChoice.ofSpeakers(
                                form,
                                tools,
                                "Who says the piece",
                                piece(card, Piece::speaker),
                                name -> GapPieces.saidBy(card.shown(), name))));
        card.words("Its parts", parts);
        card.beginsWith(title);
        return card;
    }

    private static Field act(
            ThingCard card, Tools tools, String name, Function<Show, String> id, ShowChoice.Making making) {
        return card.choice(name, ShowChoice.ofActs(card.form(), tools, name, id, making));
    }

    private static Function<Show, String> duty(ThingCard card, Function<Remark, @Nullable String> what) {
        return show -> show.remarks().stream()
                .filter(r -> r.id().equals(card.shown()))
                .findFirst()
                .map(what)
                .orElse("")
                .strip();
    }

    private static Function<Show, String> asked(ThingCard card, Function<DutyTimes, @Nullable String> what) {
        return duty(card, r -> what.apply(r.dutyTimes()));
    }

    private static Function<Show, String> piece(ThingCard card, Function<Piece, @Nullable String> what) {
        return show -> show.gaps().pieces().stream()
                .filter(p -> p.id().equals(card.shown()))
                .findFirst()
                .map(what)
                .orElse("")
                .strip();
    }

    private static @Nullable String hour(DutyTimes asked) {
        LocalTime by = asked.by();
        return by == null ? null : by.toString();
    }
}
