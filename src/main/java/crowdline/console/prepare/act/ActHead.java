package crowdline.console.prepare.act;

import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Labelled;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.SlotText;
import crowdline.console.prepare.field.Typed;
import crowdline.console.prepare.field.TypedText;
import crowdline.console.prepare.glance.PrepareView.ActHeadView;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.act.Acts;
import crowdline.edit.act.Edit;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** How an act is announced, who flies it, and its slot; each is typed where it stands. */
final class ActHead extends JPanel {
    private final Fields fields = new Fields();
    private final JTextField title = fields.line("How the act is announced");
    private final JTextField performer = fields.line("Who flies");
    private final JTextField begins = fields.line("When it begins, such as 14:30");
    private final JTextField minutes = fields.line("How many minutes it is planned for");
    private final transient Tools tools;
    private transient ActHeadView shown = ActHeadView.NONE;

    ActHead(Tools tools) {
        this.tools = tools;
        Typed.into(title, () -> change(title, shown.title(), text -> Acts.rename(shown.id(), text)));
        Typed.into(performer, () -> change(performer, shown.performer(), text -> Acts.performer(shown.id(), text)));
        Typed.into(begins, () -> change(begins, shown.begins(), text -> slot(text, minutes.getText())));
        Typed.into(minutes, () -> change(minutes, shown.minutes(), text -> slot(begins.getText(), text)));
        getAccessibleContext().setAccessibleName("The act");
    }

    /** What a text makes; nothing where it is none of what is wanted, which was said then. */
    private interface Making {
        Edit of(String text) throws SlotText.NoSlot;
    }

    private Edit slot(String from, String lasting) throws SlotText.NoSlot {
        return Acts.slot(shown.id(), SlotText.time(from), SlotText.minutes(lasting));
    }

    private void change(JTextField field, String before, Making making) {
        String typed = field.getText().strip();
        if (typed.equals(before) || !tools.editor().isOpen()) {
            return;
        }
        try {
            tools.editor()
                    .make(
                            making.of(typed),
                            show -> TypedText.taken(field, typed),
                            () -> TypedText.refused(field, typed, before));
        } catch (SlotText.NoSlot e) {
            tools.editor().refuse(String.valueOf(e.getMessage()));
            TypedText.refused(field, typed, before);
        }
    }

    public void show(ActHeadView next) {
        boolean same = next.id().equals(shown.id());
        shown = next;
        put(title, next.title(), same);
        put(performer, next.performer(), same);
        put(begins, next.begins(), same);
        put(minutes, next.minutes(), same);
    }

    /** What is being typed into the same act stays. */
    private static void put(JTextField field, String next, boolean same) {
        if (same) {
            TypedText.follow(field, next);
        } else {
            TypedText.show(field, next);
        }
    }

    boolean takeFocus() {
        title.selectAll();
        return title.requestFocusInWindow();
    }

    public void wear(Appearance worn) {
        removeAll();
        fields.wear(worn);
        boolean roomy = Roomy.in(worn);
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(8) + " 0",
                roomy
                        ? "[0:0:,grow 48,fill][0:0:,grow 30,fill][0:0:,grow 12,fill][0:0:,grow 10,fill]"
                        : "[0:0:,grow 60,fill][0:0:,grow 40,fill]"));
        Labelled.add(
                this,
                fields,
                worn,
                new String[] {"Act", "Who flies", "Begins", "Minutes"},
                new JTextField[] {title, performer, begins, minutes},
                roomy ? 4 : 2);
        title.setFont(worn.strong(TextRole.BODY));
        revalidate();
        repaint();
    }
}
