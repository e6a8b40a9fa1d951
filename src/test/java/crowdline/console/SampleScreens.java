package crowdline.console;

import crowdline.console.glossary.GlossaryView;
import crowdline.console.live.LiveView;
import crowdline.console.live.SampleLiveViews;
import crowdline.console.live.SampleOnAir;
import crowdline.console.live.SmallShow;
import crowdline.console.live.day.DutiesView;
import crowdline.console.pace.RemarksToTime;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesView;
import crowdline.console.passes.PassesView.FigureLine;
import crowdline.console.passes.PassesView.PassLine;
import crowdline.console.pictures.AnnouncementPicture;
import crowdline.console.pictures.EditedPicture;
import crowdline.console.pictures.Pictures;
import crowdline.console.pictures.PrintPicture;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.prepare.glance.PrepareView.FindingView;
import crowdline.console.prepare.glance.PrepareView.RemarkView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.theme.Tone;
import crowdline.console.words.SampleWords;
import crowdline.console.words.WordsModel;
import crowdline.flight.body.Vec;
import crowdline.sheet.page.Page;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.MomentKind;
import crowdline.sight.SideView;
import crowdline.sight.picture.Caption;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import crowdline.speech.say.Spoken;
import crowdline.storage.show.IncidentTemplate;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A made-up show on every screen. */
public final class SampleScreens {
    private static final String[] NAMES = {
        "Loop", "Half Cuban", "Reposition", "Stall turn", "Four-point hesitation roll", "Avalanche", "Spin", "Low pass"
    };

    private SampleScreens() {}

    public static void main(String[] args) throws IOException {
        Pictures.renderAll(Path.of(args[0]), all());
    }

    public static Pictures.Screens all() {
        Map<String, LiveView> moments = new LinkedHashMap<>(SampleLiveViews.all());
        moments.put("incident", SampleLiveViews.incident());
        return new Pictures.Screens(
                moments,
                new Pictures.Ordered(SampleLiveViews.flying(), SampleLiveViews.order(), new DutiesView(List.of())),
                new AnnouncementPicture(
                        SampleLiveViews.flying(), IncidentTemplate.shipped().announcements()),
                new SampleOnAir().second(null),
                Map.of(),
                Map.of(),
                prepare(),
                new EditedPicture(SmallShow.show(), prepare(), ""),
                SampleScreens::words,
                glossary(),
                RemarksToTime.of(List.of(), new Spoken(Map.of())),
                new PrintPicture(
                        SmallShow.show(),
                        new Pages("cards", List.of(new Page(PaperSize.A4, List.of(), List.of())), List.of())));
    }

    static WordsModel words() {
        WordsModel model = SampleWords.model(SmallShow.show());
        model.choosePlace("a1", "f1");
        model.choose(1);
        return model;
    }

    static PrepareView prepare() {
        return new PrepareView(
                "Marram Field Air Day",
                "Marram Field, Saturday 6 June 2026",
                "1013 hPa, 18 °C, wind 240° 12 kt, cloud base 2,200 ft",
                List.of(
                        act("Rosa Vent, Calder 200", "Rosa Vent", "Calder 200", "14:30, 12 min"),
                        act("The Tern Pair", "Ida and Otto Tern", "Heron glider", "14:45, 10 min"),
                        act("<html><b>Bold</b> as written", "Max Unlikely", "Shrike", "15:00, 8 min")),
                List.of(
                        new FindingView(
                                new Mark(Form.STOP, Tone.ALARM, "Must fix"),
                                "The figure \"Humpty bum\" is not in the catalogue; the nearest name is \"Humpty bump\".",
                                "line 214"),
                        new FindingView(
                                new Mark(Form.DIAMOND, Tone.CAUTION, "Should fix"),
                                "The remark r-17 takes 9 s but its figure has 6 s; shorten it or give it a short form.",
                                "line 187"),
                        new FindingView(
                                new Mark(Form.RING, Tone.CALM, "Note"),
                                "The incident words were agreed with nobody yet.",
                                "line 402")));
    }

    private static ActView act(String title, String performer, String airframe, String slot) {
        List<FigureView> figures = new ArrayList<>();
        for (int i = 0; i < NAMES.length; i++) {
            figures.add(new FigureView(
                    NAMES[i],
                    "Watch the top of it: everything happens there.",
                    i / 4 + ":" + (10 + 11 * (i % 4)),
                    (8 + i) + " s",
                    (7 + i) + "–" + (10 + i) + " s",
                    Integer.toString(140 + i),
                    "360–1,540",
                    "−0.5 to +4.6",
                    remarks()));
        }
        List<SideView.Stretch> path = SampleLiveViews.incident().now().side().stretches();
        return new ActView(
                title,
                title,
                performer,
                airframe,
                slot,
                List.of(
                        new VariantView(
                                "full",
                                2000.0,
                                "from 2,000 ft",
                                "8 figures, 2 min 10 s",
                                figures,
                                new SideView(path, 0, null),
                                passes()),
                        new VariantView(
                                "rolling",
                                1200.0,
                                "from 1,200 ft",
                                "5 figures, 1 min 20 s",
                                figures.subList(2, 7),
                                new SideView(path, 0, null)),
                        new VariantView(
                                "flat",
                                null,
                                "any base",
                                "2 figures, 40 s",
                                figures.subList(6, 8),
                                new SideView(path, 0, null))),
                "full");
    }

    private static PassesView passes() {
        List<FigureLine> lines = new ArrayList<>();
        for (int i = 0; i < NAMES.length; i++) {
            lines.add(
                    i == 7
                            ? new FigureLine("14 s", "", NAMES[i] + ": predicted 14 s, not timed yet")
                            : new FigureLine(
                                    (9 + i) + " s",
                                    "3",
                                    NAMES[i] + ": predicted " + (9 + i) + ".0 s, learned " + (8 + i) + ".2 s ("
                                            + (7 + i) + ".1–" + (9 + i) + ".4 s) from 3 passes"));
        }
        return new PassesView(
                "Passes: 3 of 5 used",
                lines,
                List.of(
                        pass(1, "walked, 2 May 2026, 18:20", "", true, Form.RING, Tone.CALM, "Walked only"),
                        pass(2, "by hand, 9 May 2026, 10:05", "", true, Form.DISC, Tone.GOOD, "Counts"),
                        pass(3, "by hand, 9 May 2026, 16:40", "gusty", true, Form.DISC, Tone.GOOD, "Counts"),
                        new PassLine(
                                "p4",
                                "Pass 4, live, 16 May 2026, 14:31",
                                "key missed?",
                                true,
                                new Mark(Form.DIAMOND, Tone.CAUTION, "Counts, but unusual"),
                                List.of("Stall turn, pass 4: 19.2 s, others 12.0–13.0 s")),
                        pass(5, "from a log, 17 May 2026, 09:12", "", false, Form.RING, Tone.CALM, "Ignored")));
    }

    private static PassLine pass(
            int number, String title, String note, boolean counts, Form form, Tone tone, String word) {
        return new PassLine(
                "p" + number, "Pass " + number + ", " + title, note, counts, new Mark(form, tone, word), List.of());
    }

    private static List<RemarkView> remarks() {
        return List.of(
                new RemarkView(
                        "Call",
                        "And up it goes, into a loop.",
                        2.1,
                        2.5,
                        4,
                        new Mark(Form.DISC, Tone.GOOD, "Fits: 2 s of 4 s")),
                new RemarkView(
                        "Explanation",
                        "A loop is a circle drawn with an aeroplane, and the trick is to make it round although the"
                                + " speed changes all the way.",
                        9.2,
                        10.4,
                        8,
                        new Mark(Form.STOP, Tone.ALARM, "Too long: 9 s of 8 s")),
                new RemarkView(
                        "Fact",
                        "At the bottom she weighs four and a half times as much as on the ground.",
                        5.2,
                        5.9,
                        8,
                        new Mark(Form.DISC, Tone.GOOD, "Fits: 5 s of 8 s")));
    }

    static GlossaryView glossary() {
        List<CatalogueEntry> entries = new ArrayList<>();
        Map<String, Flown> drawings = new HashMap<>();
        for (String name : NAMES) {
            entries.add(new CatalogueEntry(
                    name,
                    List.of("ring " + name),
                    "loops",
                    "The aeroplane flies a full circle standing on its edge: up, over on its back, and down again to"
                            + " where it began.",
                    "Watch whether the top is as round as the bottom.",
                    "The speed falls all the way up and grows all the way down, so an even pull gives an egg. To make it"
                            + " round the pilot must let go a little over the top.",
                    "Stick back, less of it over the top; feet keep it straight.",
                    "Heavy, light, heavy.",
                    "",
                    "",
                    "common practice",
                    null,
                    null,
                    List.of()));
            drawings.put(name, ring());
        }
        return GlossaryView.of(new Catalogue(entries), List.of(), drawings);
    }

    /** A loop of twelve seconds, in steps of a tenth of one. */
    private static Flown ring() {
        List<Pose> poses = new ArrayList<>();
        for (int i = 0; i <= 120; i++) {
            double turn = 2 * Math.PI * i / 120;
            poses.add(new Pose(
                    i / 10.0,
                    new Vec(100 * Math.sin(turn), 0, 130 - 100 * Math.cos(turn)),
                    new Vec(Math.cos(turn), 0, Math.sin(turn)),
                    new Vec(-Math.sin(turn), 0, Math.cos(turn)),
                    2.5 + 2 * Math.cos(turn)));
        }
        return new Flown(
                poses,
                List.of(
                        new Caption(0, MomentKind.ROLLS, "pulls up"),
                        new Caption(6, MomentKind.ROLLS, "over the top")));
    }
}
