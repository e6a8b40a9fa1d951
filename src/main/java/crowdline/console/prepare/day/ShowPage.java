package crowdline.console.prepare.day;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Labelled;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.field.Tall;
import crowdline.console.prepare.glance.FileKeys;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.day.AirNumber;
import crowdline.edit.day.Days;
import crowdline.edit.day.VenueNumber;
import crowdline.measure.LengthUnit;
import crowdline.measure.Measures;
import crowdline.measure.SpeedUnit;
import crowdline.show.CrowdUnits;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.bounds.Written;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The day and the place: what the show is called, when and where, the limits as the director gave them, and the air. */
public final class ShowPage extends JPanel implements PrepareCard {
    private static final String LIMITS =
            "As your director gave them. Nothing is assumed: leave empty what was not given.";

    private static final String[] DAY = {
        "Title",
        "Date, such as 2027-06-12",
        "Place",
        "Latitude, longitude",
        "Elevation, ft",
        FileKeys.label("axisBearingDeg"),
        "Crowd to display line, m",
        "Time zone",
        "The crowd is told",
        "You read speeds in",
        "You read heights in"
    };
    private static final String[] LIMIT = {
        "Lowest height, ft", "Greatest height, ft", "To each side, m", "Beyond the line, m"
    };
    private static final String[] AIR = {
        "Pressure, hPa", "Temperature, °C", "Wind from, °", "Wind, kt", "Cloud base, ft"
    };

    private static final List<String> UNITS = List.of("miles and feet", "kilometres and metres");

    private final ShowForm form;
    private final transient Tools tools;
    private final CompassPicture compass;
    private final JPanel day = new JPanel();
    private final JPanel limits = new JPanel();
    private final JTextArea limitsHow = PlainText.wrapped("About the limits", LIMITS);
    private final JTextArea dayTitle = PlainText.wrapped("Heading", "The day and the place");
    private final JTextArea limitsTitle = PlainText.wrapped("Heading", "Limits");
    private final JTextArea airTitle = PlainText.wrapped("Heading", "The air of the day");
    private final JTextArea airHow = PlainText.wrapped("About the air", "Ctrl+M reads it from a METAR.");
    private final JComboBox<SpeedUnit> speeds;
    private final JComboBox<LengthUnit> heights;
    private transient Measures measures;
    private final JComponent[] dayFields;
    private final JComponent[] limitFields;
    private final JComponent[] airFields;

    public ShowPage(Appearance appearance, Tools tools) {
        this.tools = tools;
        form = new ShowForm(tools);
        compass = new CompassPicture(appearance);
        measures = appearance.measures();
        speeds = form.fields().choice(DAY[9], List.of(SpeedUnit.values()));
        heights = form.fields().choice(DAY[10], List.of(LengthUnit.values()));
        reads(speeds, unit -> measures.with((SpeedUnit) unit));
        reads(heights, unit -> measures.with((LengthUnit) unit));
        dayFields = new JComponent[] {
            form.line(DAY[0], Show::title, Days::title),
            form.line(DAY[1], show -> show.date().toString(), ShowPage::date),
            form.line(DAY[2], show -> show.venue().name(), Days::place),
            form.line(DAY[3], ShowPage::position, ShowPage::position),
            number(DAY[4], VenueNumber.ELEVATION_FT),
            number(DAY[5], VenueNumber.BEARING_DEG),
            number(DAY[6], VenueNumber.CROWD_M),
            form.line(DAY[7], show -> show.venue().timeZone().getId(), ShowPage::zone),
            form.choice(
                    DAY[8],
                    UNITS,
                    ShowPage::units,
                    typed -> Days.units(typed.equals(UNITS.get(0)) ? CrowdUnits.MILES : CrowdUnits.METRIC)),
            speeds,
            heights
        };
        limitFields = new JComponent[] {
            number(LIMIT[0], VenueNumber.BASE_FT),
            number(LIMIT[1], VenueNumber.CEILING_FT),
            number(LIMIT[2], VenueNumber.HALF_LENGTH_M),
            number(LIMIT[3], VenueNumber.DEPTH_M)
        };
        airFields = new JComponent[AIR.length];
        for (int i = 0; i < AIR.length; i++) {
            AirNumber number = List.of(AirNumber.values()).get(i);
            String name = AIR[i];
            airFields[i] = form.line(
                    name,
                    show -> Numbers.text(number.of(show.air())),
                    typed -> Days.air(number, Numbers.read(name, typed)));
        }
        getAccessibleContext().setAccessibleName("Show");
    }

    private void reads(JComboBox<?> box, Function<Object, Measures> chosen) {
        box.addActionListener(e -> {
            Measures next = chosen.apply(Objects.requireNonNull(box.getSelectedItem()));
            if (!next.equals(measures)) {
                tools.measures().accept(next);
            }
        });
    }

    private JComponent number(String name, VenueNumber number) {
        return form.line(
                name,
                show -> Numbers.text(number.of(show.venue())),
                typed -> tools.host().get().days().number(number, Numbers.read(name, typed)));
    }

    private static String units(Show show) {
        return UNITS.get(show.venue().crowdUnits() == CrowdUnits.MILES ? 0 : 1);
    }

    private static Edit date(String typed) throws CannotBe {
        return Days.date(TypedDate.of(typed)
                .orElseThrow(() -> new CannotBe(
                        "“" + brief(typed) + "” is no date; type one such as 2027-06-12 or 12 June 2027")));
    }

    private static Edit zone(String typed) throws CannotBe {
        return Days.timeZone(TypedPlace.zone(typed)
                .orElseThrow(() ->
                        new CannotBe("“" + brief(typed) + "” is no time zone; type one such as Europe/London or UTC")));
    }

    private static String brief(String typed) {
        return Written.brief(typed, 21);
    }

    private static String position(Show show) {
        Venue v = show.venue();
        return v.latDeg() == null ? "" : Numbers.text(v.latDeg()) + ", " + Numbers.text(v.lonDeg());
    }

    private static Edit position(String typed) throws CannotBe {
        if (typed.isBlank()) {
            return Days.position(null, null);
        }
        TypedPlace place = TypedPlace.of(typed)
                .orElseThrow(() -> new CannotBe("“" + brief(typed)
                        + "” is no place; type degrees north and degrees east, such as 51.4, -0.9 or 51.4N 0.9W"));
        return Days.position(place.latDeg(), place.lonDeg());
    }

    @Override
    public void edited(Show show) {
        form.show(show);
        compass.show(Optional.ofNullable(show.venue().axisBearingDeg()));
    }

    @Override
    public boolean takeFocus() {
        return dayFields[0].requestFocusInWindow();
    }

    @Override
    public void wear(Appearance worn) {
        measures = worn.measures();
        speeds.setSelectedItem(measures.speeds());
        heights.setSelectedItem(measures.heights());
        removeAll();
        form.wear(worn);
        for (JTextArea heading : new JTextArea[] {dayTitle, limitsTitle, airTitle}) {
            heading.setFont(worn.strong(TextRole.SMALL));
            heading.setFocusable(false);
        }
        for (JTextArea how : new JTextArea[] {limitsHow, airHow}) {
            how.setFont(worn.plain(TextRole.BODY));
            how.setForeground(worn.palette().soft());
            how.setFocusable(false);
        }
        compass.wear(worn, worn.zoom().factor());
        boolean roomy = Roomy.in(worn);
        Tall both = new Tall(new MigLayout(
                "insets 0, gap " + worn.room(32) + " " + worn.room(14) + (roomy ? "" : ", wrap 1"),
                roomy ? "[0:0:,grow 55,fill][0:0:,grow 45,fill]" : "[0:0:,grow,fill]",
                "[top]"));
        day.removeAll();
        day.setLayout(Labelled.columns(worn, 2));
        day.add(dayTitle, "spanx, wmin 0, wrap");
        Labelled.add(day, form.fields(), worn, DAY, dayFields, 2);
        limits.removeAll();
        limits.setLayout(Labelled.columns(worn, 2));
        limits.add(limitsTitle, "spanx, wmin 0, wrap");
        limits.add(limitsHow, "spanx, wmin 0, wrap");
        Labelled.add(limits, form.fields(), worn, LIMIT, limitFields, 2);
        limits.add(airTitle, "spanx, wmin 0, gaptop " + worn.room(14) + ", wrap");
        limits.add(airHow, "spanx, wmin 0, wrap");
        Labelled.add(limits, form.fields(), worn, AIR, airFields, 2);
        JPanel left = new JPanel(new MigLayout("insets 0, gap 0 " + worn.room(14) + ", wrap 1", "[0:0:,grow,fill]"));
        left.add(day, "wmin 0");
        left.add(compass, "wmin 0, h " + worn.room(250) + "!");
        both.add(left, "wmin 0");
        both.add(limits, "wmin 0");
        JScrollPane scroll = Scrolling.down(both);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        setLayout(new BorderLayout());
        add(scroll);
        revalidate();
        repaint();
    }
}
