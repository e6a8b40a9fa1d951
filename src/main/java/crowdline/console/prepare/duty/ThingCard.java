package crowdline.console.prepare.duty;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.field.TypedText;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.show.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** A card of one thing that is said on the day: fields in rows, and how it is meant below them. */
final class ThingCard extends JPanel implements PrepareCard {
    /** One, two or three fields stand beside each other. */
    private static final int COLUMNS = 6;

    private final ShowForm form;
    private final JTextArea how;
    private final List<ShowChoice> choices = new ArrayList<>();
    private final List<List<Field>> rows = new ArrayList<>();
    private final transient Supplier<String> chosen;
    private @Nullable JTextComponent words;
    private @Nullable JTextComponent begun;
    private String shown = "";

    /** A field, and what stands over it. */
    record Field(String name, JComponent field) {}

    /**
     * @param name what it is a card of
     * @param meant how it is meant
     * @param chosen the id of the thing that is edited
     */
    ThingCard(Tools tools, String name, String meant, Supplier<String> chosen) {
        this.chosen = chosen;
        form = new ShowForm(tools);
        how = PlainText.wrapped("How it is meant", meant);
        how.setFocusable(false);
        getAccessibleContext().setAccessibleName(name);
    }

    /** What makes its fields. */
    ShowForm form() {
        return form;
    }

    /** The id of the thing in its fields. */
    String shown() {
        return shown;
    }

    /** Keeps a choice to what the show has. */
    Field choice(String name, ShowChoice choice) {
        choices.add(choice);
        return new Field(name, choice.box());
    }

    /** Fields beside each other, below those there are. */
    void row(Field... fields) {
        rows.add(List.of(fields));
    }

    /** Its words, over the whole width, as high as there is room. */
    void words(String name, JTextArea area) {
        words = area;
        row(new Field(name, area));
    }

    /** What is typed into first in a new one. */
    void beginsWith(JTextComponent field) {
        begun = field;
    }

    @Override
    public void edited(Show show) {
        shown = chosen.get();
        choices.forEach(choice -> choice.know(show));
        form.show(show, shown);
    }

    /** Takes what was typed: a click into the list chooses another before the field knows that it was left. */
    void settle() {
        if (!shown.isEmpty()) {
            form.settle();
        }
    }

    @Override
    public boolean takeFocus() {
        return words != null && words.requestFocusInWindow();
    }

    /** Begins to write a new one. */
    void begin() {
        TypedText.begin(Objects.requireNonNull(begun));
    }

    @Override
    public void wear(Appearance worn) {
        removeAll();
        form.wear(worn);
        how.setFont(worn.plain(TextRole.BODY));
        how.setForeground(worn.palette().soft());
        StringBuilder heights = new StringBuilder();
        rows.forEach(row -> heights.append("[]").append(isWords(row) ? "[0:0:,grow,fill]" : "[]"));
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(16) + " " + worn.room(4),
                "[0:0:,sg one,grow,fill]".repeat(COLUMNS),
                heights + "[]"));
        for (List<Field> row : rows) {
            String span = "span " + COLUMNS / row.size() + ", wmin 0";
            for (int i = 0; i < row.size(); i++) {
                String at = span + (i == row.size() - 1 ? ", wrap" : "");
                add(form.over(row.get(i).field(), row.get(i).name()), at);
            }
            for (int i = 0; i < row.size(); i++) {
                JComponent field = row.get(i).field();
                String at = span + (i == row.size() - 1 ? ", wrap" : "");
                if (field.equals(words)) {
                    add(Scrolling.down(field), at + ", grow, hmin 0");
                } else {
                    add(field, at);
                }
            }
        }
        add(how, "spanx, wmin 0");
        form.wear(worn);
        revalidate();
        repaint();
    }

    private boolean isWords(List<Field> row) {
        return row.get(0).field().equals(words);
    }
}
