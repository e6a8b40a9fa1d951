package crowdline.console.prepare.page;

import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Typed;
import crowdline.console.prepare.field.TypedText;
import crowdline.console.theme.Appearance;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.measure.Measures;
import crowdline.measure.Measures.Dimension;
import crowdline.show.Show;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;

/** Fields that show what stands in the show and change it where they are typed into. On the event thread. */
public final class ShowForm {
    private final Tools tools;
    private final Fields fields = new Fields();
    private final List<Bound> bound = new ArrayList<>();
    private boolean showing;
    private String thing = "";
    private Measures measures = Measures.USUAL;

    /** What a text makes of the show. */
    public interface Making {
        Edit of(String typed) throws CannotBe;
    }

    /**
     * A field.
     *
     * @param now what stands in the show for it
     * @param showing shows that
     * @param following shows it, unless something else is being typed
     * @param settling takes what was typed
     */
    private record Bound(
            Function<Show, String> now, Consumer<String> showing, Consumer<String> following, Runnable settling) {}

    public ShowForm(Tools tools) {
        this.tools = tools;
    }

    public Fields fields() {
        return fields;
    }

    public JTextField line(String name, Function<Show, String> kept, Making made) {
        JTextField field = fields.line(name);
        Dimension dimension = Dimension.of(name);
        Function<Show, String> now = show -> measures.shown(kept.apply(show), dimension);
        Making making = typed -> made.of(measures.meant(typed, dimension));
        Typed.into(field, () -> typed(field, now, making));
        bound.add(new Bound(
                now,
                text -> TypedText.show(field, text),
                text -> TypedText.follow(field, text),
                () -> typed(field, now, making)));
        return field;
    }

    public JTextArea area(String name, int rows, Function<Show, String> now, Making making) {
        JTextArea area = fields.area(name, rows);
        area.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    typed(area, now, making);
                }
            }
        });
        bound.add(new Bound(
                now,
                text -> TypedText.show(area, text),
                text -> TypedText.follow(area, text),
                () -> typed(area, now, making)));
        return area;
    }

    public JComboBox<String> choice(String name, List<String> options, Function<Show, String> now, Making making) {
        JComboBox<String> box = fields.choice(name, options);
        box.addActionListener(e -> {
            String chosen = String.valueOf(box.getSelectedItem());
            if (!showing
                    && tools.editor().isOpen()
                    && !chosen.equals(now.apply(tools.editor().now()))) {
                make(making, chosen, () -> {}, () -> show(tools.editor().now()));
            }
        });
        bound.add(new Bound(now, box::setSelectedItem, box::setSelectedItem, () -> {}));
        return box;
    }

    public JLabel over(javax.swing.JComponent field, String words) {
        return fields.over(field, words);
    }

    private void typed(JTextComponent field, Function<Show, String> now, Making making) {
        if (!tools.editor().isOpen()) {
            return;
        }
        String before = now.apply(tools.editor().now());
        String text = field.getText().strip();
        if (!text.equals(before)) {
            String of = thing;
            make(
                    making,
                    text,
                    () -> {
                        if (of.equals(thing)) {
                            TypedText.taken(field, text);
                            TypedText.follow(field, now.apply(tools.editor().now()));
                        }
                    },
                    () -> {
                        if (of.equals(thing)) {
                            TypedText.refused(
                                    field, text, now.apply(tools.editor().now()));
                        }
                    });
        }
    }

    private void make(Making making, String text, Runnable done, Runnable otherwise) {
        try {
            tools.editor().make(making.of(text), show -> done.run(), otherwise);
        } catch (CannotBe e) {
            tools.editor().refuse(e.why());
            otherwise.run();
        }
    }

    /** Takes what was typed and not left yet, before something else is shown in its place. */
    public void settle() {
        bound.forEach(b -> b.settling().run());
    }

    /** Shows what stands in a show; what is being typed stays. */
    public void show(Show show) {
        show(show, thing);
    }

    /**
     * Shows what stands in a show of a thing. What is being typed of the same thing stays: a change made a field ago is
     * answered when the next is written already.
     *
     * @param of the id of the thing
     */
    public void show(Show show, String of) {
        boolean isSame = of.equals(thing);
        thing = of;
        show(show, isSame);
    }

    private void show(Show show, boolean keepsTyped) {
        showing = true;
        try {
            bound.forEach(b ->
                    (keepsTyped ? b.following() : b.showing()).accept(b.now().apply(show)));
        } finally {
            showing = false;
        }
    }

    public void wear(Appearance appearance) {
        boolean other = !appearance.measures().equals(measures);
        measures = appearance.measures();
        fields.wear(appearance);
        if (other && tools.editor().isOpen()) {
            show(tools.editor().now(), false);
        }
    }
}
