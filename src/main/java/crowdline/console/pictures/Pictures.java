package crowdline.console.pictures;

import crowdline.console.ConsoleMenus;
import crowdline.console.ConsolePane;
import crowdline.console.KeysShown;
import crowdline.console.UnitsMenu;
import crowdline.console.debrief.DebriefView;
import crowdline.console.foot.MessagesPanel;
import crowdline.console.glossary.GlossaryView;
import crowdline.console.keys.CommandActions;
import crowdline.console.live.LiveView;
import crowdline.console.live.SecondView;
import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.OrderView;
import crowdline.console.place.Place;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.second.SecondPanel;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Theme;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.walk.WalkView;
import crowdline.console.window.NamedAction;
import crowdline.console.window.Snapshot;
import crowdline.console.words.WordsModel;
import crowdline.loaded.Finder;
import crowdline.speech.say.SpokenText;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.TermsFile;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JPanel;

/** Paints every screen into picture files without opening a window, to look at and to compare. */
public final class Pictures {
    /** How large a window is drawn and at which zoom. */
    public record Setting(int widthPx, int heightPx, int zoomPercent) {}

    private static final String SECOND = "second";

    /** A small and a large window, as designed and at the largest zoom. */
    public static final List<Setting> SETTINGS = List.of(
            new Setting(1280, 800, 100),
            new Setting(1280, 800, 200),
            new Setting(1920, 1080, 100),
            new Setting(1920, 1080, 200));

    /**
     * What is drawn.
     *
     * @param moments moments of Live, each under the name of its picture
     * @param order a moment of Live with the running order open
     * @param announcements the announcements over a moment of Live
     * @param second what the second window shows of a moment
     * @param walks moments of Walk through, likewise
     * @param debriefs debriefs, likewise
     * @param prepare the show at a glance
     * @param edited the same with an act being edited
     * @param words the words of a show being written
     * @param glossary the glossary
     * @param remarks what a speaker is timed with
     * @param print what the preview of paper shows
     */
    public record Screens(
            Map<String, LiveView> moments,
            Ordered order,
            AnnouncementPicture announcements,
            SecondView second,
            Map<String, WalkView> walks,
            Map<String, DebriefView> debriefs,
            PrepareView prepare,
            EditedPicture edited,
            Supplier<WordsModel> words,
            GlossaryView glossary,
            List<SpokenText> remarks,
            PrintPicture print) {
        public Screens {
            remarks = List.copyOf(remarks);
            walks = Collections.unmodifiableMap(new LinkedHashMap<>(walks));
            debriefs = Collections.unmodifiableMap(new LinkedHashMap<>(debriefs));
            moments = Collections.unmodifiableMap(new LinkedHashMap<>(moments));
        }
    }

    /** A moment of Live, its running order, and its duties. */
    public record Ordered(LiveView live, OrderView order, DutiesView duties) {}

    private Pictures() {}

    /**
     * Draws every screen in every theme and setting; on the event thread, or with no window open.
     *
     * @return the files written
     */
    public static List<Path> renderAll(Path out, Screens screens, List<Theme> themes, List<Setting> settings)
            throws IOException {
        Files.createDirectories(out);
        LookAndFeel.loadType();
        List<Path> written = new ArrayList<>();
        for (Theme theme : themes) {
            for (Setting setting : settings) {
                Appearance appearance = new Appearance(theme, new Zoom(setting.zoomPercent()));
                LookAndFeel.wear(appearance);
                for (Map.Entry<String, Consumer<ConsolePane>> screen :
                        screens(screens).entrySet()) {
                    BufferedImage image = draw(appearance, setting, screen.getValue());
                    written.add(write(image, out, screen.getKey(), theme, setting));
                }
                for (PacePicture pace : PacePicture.values()) {
                    BufferedImage image = pace.draw(appearance, setting, screens.remarks());
                    written.add(write(image, out, pace.title(), theme, setting));
                }
                written.add(write(second(appearance, setting, screens.second()), out, SECOND, theme, setting));
                written.add(write(screens.print().draw(appearance, setting), out, PrintPicture.TITLE, theme, setting));
            }
        }
        return List.copyOf(written);
    }

    private static BufferedImage second(Appearance appearance, Setting setting, SecondView view) {
        SecondPanel panel = new SecondPanel(appearance);
        panel.show(view);
        return Snapshot.of(panel, setting.widthPx(), setting.heightPx());
    }

    private static Path write(BufferedImage image, Path out, String name, Theme theme, Setting setting)
            throws IOException {
        Path file = out.resolve(name + "-" + theme.id() + "-" + setting.widthPx() + "x" + setting.heightPx() + "-"
                + setting.zoomPercent() + ".png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    /** The names of all pictures of one theme and setting, in the order drawn. */
    static List<String> names(Screens screens) {
        return Stream.concat(
                        screens(screens).keySet().stream(),
                        Stream.concat(
                                Stream.of(PacePicture.values()).map(PacePicture::title),
                                Stream.of(SECOND, PrintPicture.TITLE)))
                .toList();
    }

    /** Draws every screen in all themes at the usual settings. */
    public static List<Path> renderAll(Path out, Screens screens) throws IOException {
        return renderAll(out, screens, Themes.all(), SETTINGS);
    }

    private static Map<String, Consumer<ConsolePane>> screens(Screens screens) {
        Map<String, Consumer<ConsolePane>> all = new LinkedHashMap<>();
        screens.moments()
                .forEach((name, view) -> all.put(name, pane -> {
                    pane.go(Place.LIVE);
                    pane.showLive(view);
                }));
        all.put("live-order", pane -> {
            pane.go(Place.LIVE);
            pane.showLive(screens.order().live());
            pane.live().showOrder(screens.order().order());
        });
        all.putAll(screens.announcements().screens());
        all.put("live-looked-up", pane -> {
            pane.go(Place.LIVE);
            pane.showLive(screens.order().live());
            pane.live()
                    .find()
                    .open(Finder.of(screens.edited().show(), CatalogueFile.shipped(), TermsFile.shipped())::find);
            pane.live().find().type("stal tur");
        });
        all.put("live-duties", pane -> {
            pane.go(Place.LIVE);
            pane.showLive(screens.order().live());
            pane.live().showDuties(screens.order().duties());
        });
        screens.walks()
                .forEach((name, view) -> all.put(name, pane -> {
                    pane.go(Place.WALK);
                    pane.walk().show(view);
                }));
        screens.debriefs()
                .forEach((name, view) -> all.put(name, pane -> {
                    pane.go(Place.DEBRIEF);
                    pane.debrief().show(view);
                }));
        DebriefView day = screens.debriefs().get("debrief");
        if (day != null) {
            all.put("debrief-day", pane -> charts(pane, day, 0));
            all.put("debrief-act", pane -> charts(pane, day, 1));
        }
        all.put("prepare", pane -> pane.showPrepare(screens.prepare()));
        all.put("prepare-passes", pane -> {
            pane.showPrepare(screens.prepare());
            pane.prepare().showPasses();
        });
        all.putAll(screens.edited().screens());
        all.put("words", pane -> {
            pane.go(Place.WORDS);
            pane.words().show(screens.words().get());
        });
        all.put("prepare-empty", pane -> {
            pane.go(Place.PREPARE);
            pane.prepare().refresh();
        });
        all.put("glossary", pane -> {
            pane.go(Place.GLOSSARY);
            pane.glossary().show(screens.glossary());
        });
        all.put("glossary-flown", pane -> {
            pane.go(Place.GLOSSARY);
            pane.glossary().show(screens.glossary());
            pane.glossary().ifMade(g -> {
                g.choose("half Cuban");
                g.nextMoment();
                g.nextMoment();
                g.nextMoment();
            });
        });
        all.put("glossary-asked", pane -> {
            pane.go(Place.GLOSSARY);
            pane.glossary().show(screens.glossary());
            pane.glossary().ifMade(g -> g.ask(screens.glossary().asked().answer(0)));
        });
        all.put("glossary-told", pane -> {
            pane.go(Place.GLOSSARY);
            pane.glossary().show(screens.glossary());
            pane.glossary()
                    .ifMade(g -> g.ask(screens.glossary()
                            .asked()
                            .answer(0)
                            .answer(1)
                            .answer(1)
                            .answer(0)));
        });
        all.put("glossary-drill", pane -> {
            pane.go(Place.GLOSSARY);
            pane.glossary().show(screens.glossary());
            pane.glossary().drill(3);
            pane.glossary().ifMade(g -> g.answer(1));
        });
        all.put("keys", pane -> pane.showKeys(KeysShown.OF_THE_PLACE));
        all.put("keys-everywhere", pane -> pane.showKeys(KeysShown.EVERYWHERE));
        all.put("keys-walk", pane -> {
            pane.go(Place.WALK);
            pane.showKeys(KeysShown.OF_THE_PLACE);
        });
        return all;
    }

    private static void charts(ConsolePane pane, DebriefView day, int chart) {
        pane.go(Place.DEBRIEF);
        pane.debrief().show(day);
        pane.debrief().turn();
        pane.debrief().step(chart);
    }

    private static BufferedImage draw(Appearance appearance, Setting setting, Consumer<ConsolePane> scene) {
        return Snapshot.of(
                window(appearance, setting.widthPx(), setting.heightPx(), scene),
                setting.widthPx(),
                setting.heightPx());
    }

    /** What a window holds, with its menus, in a scene. */
    public static JPanel window(Appearance appearance, int widthPx, int heightPx, Consumer<ConsolePane> scene) {
        CommandActions actions = new CommandActions(command -> {});
        NamedAction demo = new NamedAction("Open the demo show", () -> {});
        ConsoleMenus menus = new ConsoleMenus(
                actions,
                demo,
                new NamedAction(MessagesPanel.TITLE, () -> {}),
                List::of,
                path -> {},
                new UnitsMenu(appearance::measures, units -> {}));
        ConsolePane pane = new ConsolePane(appearance, actions, demo);
        JPanel window = new JPanel(new BorderLayout());
        window.add(menus.bar(), BorderLayout.NORTH);
        window.add(pane, BorderLayout.CENTER);
        window.setPreferredSize(new Dimension(widthPx, heightPx));
        scene.accept(pane);
        menus.chosen(pane.place());
        return window;
    }
}
