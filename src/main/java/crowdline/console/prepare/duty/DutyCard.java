package crowdline.console.prepare.duty;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.day.AskedDuties;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One duty of the day: its words, how often and when. */
final class DutyCard extends JPanel implements PrepareCard {
    private static final String BETWEEN = "Gaps only";
    private static final String ALSO = "Acts too";
    private static final String HOW =
            "Gaps are between acts. An hour or a space between may be left empty: the last time by the end of the day,"
                    + " a quarter of an hour from one time to the next. Before an act it is not asked for any more once that"
                    + " has begun.";

    private final ShowForm form;
    private final JTextArea words;
    private final JTextField shorter;
    private final JTextField times;
    private final JTextField apart;
    private final JTextField by;
    private final JComboBox<String> where;
    private final ActChoice after;
    private final ActChoice before;
    private final JTextArea how = PlainText.wrapped("About duties", HOW);
    private final transient Supplier<String> chosen;
    private String shown = "";

    /** @param chosen the id of the duty that is edited */
    DutyCard(Tools tools, Supplier<String> chosen) {
        this.chosen = chosen;
        form = new ShowForm(tools);
        words = form.area("What must be said", 4, of(Remark::text), typed -> AskedDuties.words(shown, typed));
        shorter = form.line(
                "The same in short",
                of(r -> r.shortText() == null ? "" : r.shortText()),
                typed -> AskedDuties.shortWords(shown, typed));
        times = form.line(
                "How often", asked(d -> Integer.toString(d.times())), typed -> AskedDuties.times(shown, typed));
        apart = form.line(
                "Minutes apart", asked(d -> Numbers.text(d.apartMinutes())), typed -> AskedDuties.apart(shown, typed));
        by = form.line("The last by", asked(DutyCard::hour), typed -> AskedDuties.by(shown, typed));
        where = form.choice(
                "Where",
                List.of(BETWEEN, ALSO),
                asked(d -> d.inActs() ? ALSO : BETWEEN),
                typed -> AskedDuties.inActs(shown, typed.equals(ALSO)));
        after = new ActChoice(
                form, tools, "After the act", asked(DutyTimes::afterAct), id -> AskedDuties.after(shown, id));
        before = new ActChoice(
                form, tools, "Before the act", asked(DutyTimes::beforeAct), id -> AskedDuties.before(shown, id));
        how.setFocusable(false);
        getAccessibleContext().setAccessibleName("Duty");
    }

    private Function<Show, String> of(Function<Remark, @Nullable String> what) {
        return show -> duty(show).map(what).orElse("").strip();
    }

    private Function<Show, String> asked(Function<DutyTimes, @Nullable String> what) {
        return show -> duty(show).map(Remark::dutyTimes).map(what).orElse("");
    }

    private Optional<Remark> duty(Show show) {
        return show.remarks().stream().filter(r -> r.id().equals(shown)).findFirst();
    }

    private static String hour(DutyTimes asked) {
        LocalTime by = asked.by();
        return by == null ? "" : by.toString();
    }

    @Override
    public void edited(Show show) {
        shown = chosen.get();
        after.know(show);
        before.know(show);
        form.show(show);
    }

    /** Takes what was typed: a click into the list chooses another before the field knows that it was left. */
    void settle() {
        if (!shown.isEmpty()) {
            form.settle();
        }
    }

    @Override
    public boolean takeFocus() {
        return words.requestFocusInWindow();
    }

    /** Begins to write its words. */
    void write() {
        words.selectAll();
        words.requestFocusInWindow();
    }

    @Override
    public void wear(Appearance worn) {
        removeAll();
        form.wear(worn);
        how.setFont(worn.plain(TextRole.BODY));
        how.setForeground(worn.palette().soft());
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(16) + " " + worn.room(4),
                "[0:0:,grow,fill][0:0:,grow,fill][0:0:,grow,fill]",
                "[][0:0:,grow,fill][][][][][][][]"));
        add(form.over(words, "What must be said"), "spanx, wmin 0, wrap");
        add(Scrolling.down(words), "spanx, grow, wmin 0, hmin 0, wrap");
        add(form.over(shorter, "The same in short"), "spanx, wmin 0, wrap");
        add(shorter, "spanx, wmin 0, wrap");
        add(form.over(times, "How often"), "wmin 0");
        add(form.over(apart, "Minutes apart"), "wmin 0");
        add(form.over(by, "The last by"), "wmin 0, wrap");
        add(times, "wmin 0");
        add(apart, "wmin 0");
        add(by, "wmin 0, wrap");
        add(form.over(where, "Where"), "wmin 0");
        add(form.over(after.box(), "After the act"), "wmin 0");
        add(form.over(before.box(), "Before the act"), "wmin 0, wrap");
        add(where, "wmin 0");
        add(after.box(), "wmin 0");
        add(before.box(), "wmin 0, wrap");
        add(how, "spanx, wmin 0");
        form.wear(worn);
        revalidate();
        repaint();
    }
}
