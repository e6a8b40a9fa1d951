package crowdline.console.prepare.duty;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.day.GapPieces;
import crowdline.show.Piece;
import crowdline.show.Show;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One piece for a gap: what it is, which act it leads up to, and its parts. */
final class PieceCard extends JPanel implements PrepareCard {
    private static final String HOW =
            "An empty line parts the parts; Live shows one after the other. After a question stands in"
                    + " square brackets how long its answer takes, such as [30 s].";

    private final ShowForm form;
    private final JTextField title;
    private final JTextArea parts;
    private final ActChoice before;
    private final JTextArea how = PlainText.wrapped("About pieces", HOW);
    private final transient Supplier<String> chosen;
    private String shown = "";

    /** @param chosen the id of the piece that is edited */
    PieceCard(Tools tools, Supplier<String> chosen) {
        this.chosen = chosen;
        form = new ShowForm(tools);
        title = form.line("Title of the piece", of(Piece::title), typed -> GapPieces.rename(shown, typed));
        parts = form.area("Its parts", 10, of(GapPieces::typed), typed -> GapPieces.parts(shown, typed));
        before = new ActChoice(
                form, tools, "Leads up to the act", of(Piece::beforeAct), id -> GapPieces.before(shown, id));
        how.setFocusable(false);
        getAccessibleContext().setAccessibleName("Piece");
    }

    private Function<Show, String> of(Function<Piece, @Nullable String> what) {
        return show -> piece(show).map(what).orElse("").strip();
    }

    private Optional<Piece> piece(Show show) {
        return show.gaps().pieces().stream().filter(p -> p.id().equals(shown)).findFirst();
    }

    @Override
    public void edited(Show show) {
        shown = chosen.get();
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
        return parts.requestFocusInWindow();
    }

    /** Begins to call it something. */
    void name() {
        title.selectAll();
        title.requestFocusInWindow();
    }

    @Override
    public void wear(Appearance worn) {
        removeAll();
        form.wear(worn);
        how.setFont(worn.plain(TextRole.BODY));
        how.setForeground(worn.palette().soft());
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(16) + " " + worn.room(4),
                "[0:0:,grow 60,fill][0:0:,grow 40,fill]",
                "[][][][0:0:,grow,fill][]"));
        add(form.over(title, "What it is"), "wmin 0");
        add(form.over(before.box(), "Leads up to the act"), "wmin 0, wrap");
        add(title, "wmin 0");
        add(before.box(), "wmin 0, wrap");
        add(form.over(parts, "Its parts"), "spanx, wmin 0, wrap");
        add(Scrolling.down(parts), "spanx, grow, wmin 0, hmin 0, wrap");
        add(how, "spanx, wmin 0");
        form.wear(worn);
        revalidate();
        repaint();
    }
}
