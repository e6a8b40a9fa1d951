package crowdline.console.prepare.announce;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.MarkLine;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.field.TypedText;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.edit.day.Occasions;
import crowdline.show.Announcement;
import crowdline.show.Show;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** What is said on one occasion, what has to be filled in first, and who agreed it and when. */
final class AnnouncementCard extends JPanel implements PrepareCard {
    private static final String HOW =
            "What has to be filled in before it is read out stands in square brackets, such as"
                    + " [where the child is]; an empty line separates the paragraphs. When the words change, they"
                    + " have to be agreed again.";

    private final ShowForm form;
    private final JTextField occasion;
    private final JTextArea words;
    private final JTextField agreed;
    private final JTextArea blanks = PlainText.wrapped("To be filled in first", "");
    private final JTextArea how = PlainText.wrapped("About these words", HOW);
    private final MarkLine mark;
    private final transient Supplier<String> chosen;
    /** The id of the announcement in the fields. */
    private String shown = "";

    /** @param chosen the id of the announcement that is edited */
    AnnouncementCard(Appearance appearance, Tools tools, Supplier<String> chosen) {
        this.chosen = chosen;
        form = new ShowForm(tools);
        occasion = form.line("Occasion", of(Announcement::occasion), typed -> Occasions.rename(shown, typed));
        words = form.area(
                "What to say then",
                10,
                of(a -> String.join("\n\n", a.words())),
                typed -> Occasions.words(shown, typed));
        agreed = form.line(
                "Agreed with whom, and when, for this occasion",
                of(a -> a.isAgreed() ? String.valueOf(a.agreedWith()) : ""),
                typed -> Occasions.agreed(shown, typed));
        mark = new MarkLine("Whether it is agreed", appearance);
        blanks.setFocusable(false);
        how.setFocusable(false);
        getAccessibleContext().setAccessibleName("Announcement");
    }

    private Function<Show, String> of(Function<Announcement, String> what) {
        return show -> show.announcement(shown).map(what).orElse("").strip();
    }

    @Override
    public void edited(Show show) {
        shown = chosen.get();
        form.show(show, shown);
        Optional<Announcement> announcement = show.announcement(shown);
        mark.show(agreement(announcement.filter(Announcement::isAgreed).isPresent()));
        List<String> open = announcement.map(Announcement::blanks).orElse(List.of());
        blanks.setText(
                open.isEmpty() ? "Nothing has to be filled in." : "To be filled in first: " + String.join("; ", open));
    }

    /** Takes what was typed: a click into the list chooses another before the field knows that it was left. */
    void settle() {
        if (!shown.isEmpty()) {
            form.settle();
        }
    }

    private static Mark agreement(boolean isAgreed) {
        return isAgreed
                ? new Mark(Form.DISC, Tone.GOOD, "agreed")
                : new Mark(Form.DIAMOND, Tone.CAUTION, "agreed with nobody yet");
    }

    @Override
    public boolean takeFocus() {
        return words.requestFocusInWindow();
    }

    /** Begins to name the occasion. */
    void name() {
        TypedText.begin(occasion);
    }

    @Override
    public void wear(Appearance worn) {
        removeAll();
        form.wear(worn);
        mark.dress(worn);
        for (JTextArea told : List.of(blanks, how)) {
            told.setFont(worn.plain(TextRole.BODY));
            told.setForeground(worn.palette().soft());
        }
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(16) + " " + worn.room(4),
                "[0:0:,grow 60,fill][0:0:,grow 40,fill]",
                "[][][][0:0:,grow,fill][][][][]"));
        add(form.over(occasion, "Occasion"), "spanx, wmin 0, wrap");
        add(occasion, "spanx, wmin 0, wrap");
        add(form.over(words, IncidentCard.WORDS), "spanx, wmin 0, wrap");
        add(Scrolling.down(words), "spanx, grow, wmin 0, hmin 0, wrap");
        add(blanks, "spanx, wmin 0, wrap");
        add(form.over(agreed, "Agreed with whom, and when"), "spanx, wmin 0, wrap");
        add(agreed, "wmin 0");
        add(mark, "wmin 0, h " + worn.room(24) + "!, wrap");
        add(how, "spanx, wmin 0");
        form.wear(worn);
        revalidate();
        repaint();
    }
}
