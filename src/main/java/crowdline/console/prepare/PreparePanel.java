package crowdline.console.prepare;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.act.ActsPage;
import crowdline.console.prepare.aircraft.AircraftPage;
import crowdline.console.prepare.announce.AnnouncementsPage;
import crowdline.console.prepare.day.ShowPage;
import crowdline.console.prepare.duty.DutiesPage;
import crowdline.console.prepare.field.InRows;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.list.ListPage;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.Tools;
import crowdline.console.prepare.people.PeoplePage;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.Touched;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.Edit;
import crowdline.list.line.FigureList;
import crowdline.show.Show;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The Prepare place: its pages, of which one is in front, and the list of a new act over them. */
public final class PreparePanel extends JPanel {
    private static final String LIST = "LIST";

    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private final JPanel switches = new JPanel();
    private final Map<Page, JToggleButton> buttons = new EnumMap<>(Page.class);
    private final ActsPage acts;
    private final PeoplePage people;
    private final transient Map<Page, PrepareCard> pages = new EnumMap<>(Page.class);
    private final AnnouncementsPage announcements;
    private final DutiesPage duties;
    private final ListPage list;
    private final transient Tools tools;
    private Page page = Page.ACTS;
    private boolean inList;

    public PreparePanel(Appearance appearance, Tools tools) {
        this.tools = tools;
        acts = new ActsPage(appearance, tools);
        people = new PeoplePage(tools);
        list = new ListPage(appearance, tools, this::add, this::back);
        stage.add(acts, Page.ACTS.name());
        put(Page.SHOW, new ShowPage(appearance, tools));
        put(Page.AIRCRAFT, new AircraftPage(appearance, tools));
        put(Page.PEOPLE, people);
        announcements = new AnnouncementsPage(appearance, tools);
        put(Page.ANNOUNCEMENTS, announcements);
        duties = new DutiesPage(tools);
        put(Page.DUTIES, duties);
        stage.add(list, LIST);
        ButtonGroup group = new ButtonGroup();
        for (Page each : Page.values()) {
            JToggleButton button = PlainText.plain(
                    new JToggleButton(each.word() + "   " + each.command().key()));
            button.setFocusable(false);
            button.addActionListener(e -> turn(each));
            group.add(button);
            buttons.put(each, button);
        }
        tools.editor().onStep((before, after) -> Touched.figure(before, after).ifPresent(acts::chooseNext));
        getAccessibleContext().setAccessibleName("Prepare");
        wear(appearance);
        turn();
    }

    private <C extends JComponent & PrepareCard> void put(Page which, C card) {
        pages.put(which, card);
        stage.add(card, which.name());
    }

    /** Shows a show; the act that was chosen stays chosen if it is still there. */
    void show(PrepareView next) {
        acts.show(next);
        edited();
    }

    /** Shows the page in front as the show is edited now. */
    void edited() {
        PrepareCard card = pages.get(page);
        if (card != null && tools.editor().isOpen()) {
            card.edited(tools.editor().now());
        }
    }

    /** Turns from the remarks of the chosen act to its passes. */
    void showPasses() {
        turn(Page.ACTS);
        acts.showPasses();
    }

    /** Asks for the list of an act. */
    public void pasteList() {
        list.begin(tools.editor().now());
        inList = true;
        turn();
    }

    public boolean inList() {
        return inList;
    }

    public ListPage listPage() {
        return list;
    }

    public ActsPage acts() {
        return acts;
    }

    PeoplePage people() {
        return people;
    }

    AnnouncementsPage announcements() {
        return announcements;
    }

    DutiesPage duties() {
        return duties;
    }

    /** The page in front, or behind the list. */
    Page page() {
        return page;
    }

    /** Turns to where a show that was just begun is asked for its day, unless a list is asked for already. */
    void begin() {
        if (!inList) {
            turn(Page.SHOW);
        }
    }

    /** Turns to a page. Asked for again, it puts the keys where one begins there; the acts, then the figures of the act. */
    void turn(Page next) {
        boolean again = page == next && !inList;
        page = next;
        inList = false;
        edited();
        turn();
        if (again) {
            PrepareCard card = pages.get(next);
            if (card == null) {
                acts.goRound();
            } else {
                card.takeFocus();
            }
        }
    }

    private void add(ListPage.Added added) {
        AddAct adding = tools.host().get().adding();
        FigureList from = added.list();
        Edit edit = from == null
                ? adding.fromNothing(added.wanted(), Objects.requireNonNull(added.minutes()))
                : adding.fromList(from, added.wanted(), added.minutes());
        Show before = tools.editor().now();
        tools.editor()
                .make(
                        edit,
                        show -> {
                            list.made(before);
                            turn(Page.ACTS);
                            acts.goOnWith(AddAct.added(before, show).id());
                        },
                        list::refused);
    }

    /** Leaves what is open over the page in front; false if nothing is. */
    boolean back() {
        if (!inList) {
            return switch (page) {
                case ACTS -> acts.back();
                case ANNOUNCEMENTS -> announcements.back();
                case DUTIES -> duties.back();
                case SHOW, AIRCRAFT, PEOPLE -> false;
            };
        }
        if (!list.back()) {
            turn(page);
        }
        return true;
    }

    private void turn() {
        cards.show(stage, inList ? LIST : page.name());
        switches.setVisible(!inList);
        JToggleButton button = buttons.get(page);
        if (button != null) {
            button.setSelected(true);
        }
        tools.changed().run();
        SwingUtilities.invokeLater(this::takeFocus);
    }

    /** Puts the focus where one begins, unless something here has it; false if it has nowhere to go. */
    boolean takeFocus() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (owner != null && owner.isShowing() && SwingUtilities.isDescendingFrom(owner, this)) {
            return true;
        }
        PrepareCard card = pages.get(page);
        return inList ? list.takeFocus() : card == null ? acts.takeFocus() : card.takeFocus();
    }

    void wear(Appearance appearance) {
        removeAll();
        setLayout(new MigLayout(
                "insets " + appearance.room(10) + " " + appearance.room(16) + ", hidemode 3, gap 0 "
                        + appearance.room(10) + ", wrap 1",
                "[0:0:,grow,fill]",
                "[][0:0:,grow,fill]"));
        switches.removeAll();
        switches.setLayout(new InRows(appearance.px(4)));
        boolean roomy = Roomy.in(appearance);
        buttons.forEach((each, button) -> {
            // At the largest zoom there is room for the words alone, in one line.
            button.setText(roomy ? each.word() + "   " + each.command().key() : each.word());
            button.setFont(appearance.plain(roomy ? TextRole.BODY : TextRole.LABEL));
            switches.add(button);
        });
        add(switches, "cell 0 0, growx, wmin 0");
        add(stage, "cell 0 1, grow, wmin 0, hmin 0");
        acts.wear(appearance);
        pages.values().forEach(card -> card.wear(appearance));
        list.wear(appearance);
        revalidate();
        repaint();
    }
}
