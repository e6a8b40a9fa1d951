package crowdline.console.prepare;

import crowdline.console.theme.Appearance;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.Edit;
import crowdline.list.FigureList;
import crowdline.show.Act;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The Prepare place: its pages, of which one is in front. */
final class PreparePanel extends JPanel {
    private static final String ACTS = "ACTS";
    private static final String LIST = "LIST";

    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private final ActsPage acts;
    private final ListPage list;
    private final transient Tools tools;
    private String front = ACTS;

    PreparePanel(Appearance appearance, Tools tools) {
        this.tools = tools;
        acts = new ActsPage(appearance, tools);
        list = new ListPage(appearance, tools, this::add, this::back);
        stage.add(acts, ACTS);
        stage.add(list, LIST);
        getAccessibleContext().setAccessibleName("Prepare");
        wear(appearance);
    }

    /** Shows a show; the act that was chosen stays chosen if it is still there. */
    void show(PrepareView next) {
        acts.show(next);
    }

    /** Turns from the remarks of the chosen act to its passes. */
    void showPasses() {
        acts.showPasses();
    }

    /** Asks for the list of an act. */
    void pasteList() {
        list.begin(tools.editor().now());
        turn(LIST);
    }

    boolean inList() {
        return front.equals(LIST);
    }

    ListPage listPage() {
        return list;
    }

    private void add(ListPage.Added added) {
        AddAct adding = tools.host().get().adding();
        FigureList from = added.list();
        Edit edit = from == null
                ? adding.fromNothing(added.wanted(), added.minutes())
                : adding.fromList(from, added.wanted());
        tools.editor().make(edit, show -> {
            List<Act> all = show.acts();
            acts.chooseNext(all.get(all.size() - 1).id());
            back();
        });
    }

    ActsPage acts() {
        return acts;
    }

    boolean inActs() {
        return front.equals(ACTS);
    }

    /** Back to the acts; false if they are in front already and nothing is open over them. */
    boolean back() {
        if (front.equals(ACTS)) {
            return acts.back();
        }
        turn(ACTS);
        return true;
    }

    private void turn(String next) {
        front = next;
        cards.show(stage, next);
        tools.changed().run();
        SwingUtilities.invokeLater(this::takeFocus);
    }

    /** Puts the focus where one begins, unless something here has it; false if it has nowhere to go. */
    boolean takeFocus() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (owner != null && owner.isShowing() && SwingUtilities.isDescendingFrom(owner, this)) {
            return true;
        }
        return inList() ? list.takeFocus() : acts.takeFocus();
    }

    void wear(Appearance appearance) {
        removeAll();
        setLayout(new MigLayout("insets " + appearance.room(16), "[0:0:,grow,fill]", "[0:0:,grow,fill]"));
        add(stage, "grow, wmin 0, hmin 0");
        acts.wear(appearance);
        list.wear(appearance);
        revalidate();
        repaint();
    }

    static JScrollPane scroll(JComponent inside) {
        JScrollPane scroll = new JScrollPane(inside);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }
}
