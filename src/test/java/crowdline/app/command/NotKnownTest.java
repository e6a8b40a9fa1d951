package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What nobody gave is not made up: acts that are only timed, and venues that say little of themselves. */
class NotKnownTest {
    private static final String DEMO = "src/test/resources/crowdline/shows/fenmarsh-air-day.json";
    private static final String GLIDER = "thistledown-glider";

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private String show(Consumer<ObjectNode> change) throws IOException {
        ObjectNode show = (ObjectNode) new JsonMapper().readTree(Files.readString(Path.of(DEMO)));
        change.accept(show);
        Path file = folder.resolve("show.json");
        Files.writeString(file, show.toString());
        return file.toString();
    }

    private String timed(String kind) throws IOException {
        return show(show -> {
            ((ArrayNode) show.get("airframes"))
                    .addObject()
                    .put("id", "visitor")
                    .put("name", "the Harrow Whirligig")
                    .put("kind", kind);
            ObjectNode act = ((ArrayNode) show.get("acts")).insertObject(0);
            act.put("id", "visit").put("title", "The visit").put("performer", "hettie");
            act.put("performer", show.get("performers").get(0).get("id").stringValue());
            act.put("airframe", "visitor").put("slotStart", "14:10").put("slotMinutes", 3);
            ArrayNode figures = act.putArray("figures");
            figures.addObject().put("id", "in").put("figure", "take-off").put("durationS", 40);
            figures.addObject().put("id", "by").put("figure", "low pass").put("durationS", 60);
            figures.addObject().put("id", "out").put("figure", "landing").put("durationS", 50);
            act.putArray("variants")
                    .addObject()
                    .put("name", "full")
                    .putArray("order")
                    .add("in")
                    .add("by")
                    .add("out");
        });
    }

    private String withoutVenue(String... keys) throws IOException {
        return show(show -> ((ObjectNode) show.get("venue")).remove(List.of(keys)));
    }

    private JsonNode json(String... args) {
        assertThat(run(args)).as(caught.err()).isEqualTo(ExitCode.FINE);
        return new JsonMapper().readTree(caught.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"helicopter", "formation of 4", "parachute team", "fly-past"})
    void aTimedActHasTimesAndNothingElse(String kind) throws IOException {
        String file = timed(kind);

        JsonNode act = json("predict", file, "--act", "visit", "--flights", "5", "--json")
                .get("acts")
                .get(0);

        assertThat(act.get("figures")).hasSize(3);
        assertThat(act.get("figures").get(1).get("startS").doubleValue()).isEqualTo(40);
        assertThat(act.get("figures").get(1).get("endS").doubleValue()).isEqualTo(100);
        for (JsonNode figure : act.get("figures")) {
            assertThat(List.of("entryKt", "exitKt", "minKt", "maxKt", "lowestFt", "highestFt", "maxG", "minG"))
                    .allSatisfy(
                            key -> assertThat(figure.get(key).isNull()).as(key).isTrue());
            assertThat(List.of("energyInFt", "energyOutFt", "alongAM", "alongBM", "driftAM", "driftBM"))
                    .allSatisfy(
                            key -> assertThat(figure.get(key).isNull()).as(key).isTrue());
        }
    }

    /** Where a helicopter was said to be is no path either. */
    @Test
    void aTimedActHasNoPathThoughPlacesWereGiven() throws IOException {
        String file = timed("helicopter");
        String at = "{\"alongM\": 300, \"awayM\": 40, \"heightFt\": 500, \"kt\": 60, \"heading\": \"left\"}";
        Files.writeString(
                Path.of(file),
                Files.readString(Path.of(file))
                        .replace("\"durationS\":60", "\"durationS\":60,\"exit\":" + at)
                        .replace(
                                "\"slotMinutes\":3,\"figures\"", "\"slotMinutes\":3,\"entry\":" + at + ",\"figures\""));

        JsonNode act = json("predict", file, "--act", "visit", "--flights", "5", "--json")
                .get("acts")
                .get(0);

        for (JsonNode figure : act.get("figures")) {
            assertThat(figure.get("alongAM").isNull()).isTrue();
            assertThat(figure.get("maxKt").isNull()).isTrue();
        }
        assertThat(Files.readString(Path.of(file))).contains("\"entry\":{", "\"exit\":{");
    }

    @Test
    void aTimedActPrintsNoNumberOfItsFlight() throws IOException {
        String file = timed("helicopter");

        assertThat(run("predict", file, "--act", "visit", "--flights", "5")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .containsPattern("0:40  low pass +60\\.0 s  as given\\s*\\R")
                .doesNotContain("NaN");
        assertThat(run("check", file)).isEqualTo(ExitCode.FINE);
        assertThat(run("plan", file, "--act", "visit")).isEqualTo(ExitCode.FINE);
    }

    @Test
    void aTimedActHasNoFactAndNowhereToLook() throws IOException {
        String file = timed("helicopter");

        JsonNode act =
                json("facts", file, "--act", "visit", "--json").get("acts").get(0);

        assertThat(act.get("facts")).isEmpty();
        for (JsonNode figure : act.get("figures")) {
            assertThat(figure.get("facts")).isEmpty();
            assertThat(figure.get("start").isNull()).isTrue();
            assertThat(figure.get("highest").isNull()).isTrue();
        }
    }

    @Test
    void aTimedActCannotBeFollowed() throws IOException {
        Path log = Files.writeString(folder.resolve("log.nmea"), "nothing");

        assertThat(run("follow", timed("helicopter"), log.toString(), "--act", "visit"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err())
                .contains("act visit is only timed; where it flies is not known, so it cannot be followed");
    }

    @Test
    void aFigureOfATimedActNeedsItsSeconds() throws IOException {
        String file = timed("formation of four");
        Files.writeString(Path.of(file), Files.readString(Path.of(file)).replace(",\"durationS\":60", ""));

        assertThat(run("check", file)).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out())
                .contains(
                        "error: the figure \"by\" has no durationS, and nothing is computed for a formation of 4; say how"
                                + " many seconds it lasts");
    }

    @Test
    void anActThatIsComputedNeedsToBeginSomewhere() throws IOException {
        String file = show(show -> ((ObjectNode) show.get("acts").get(1)).remove("entry"));

        assertThat(run("check", file)).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out())
                .contains(
                        "error: the act \"thistledown-glider\" has no entry, so its figures cannot be computed; say where it"
                                + " begins, or time them all");
    }

    @Test
    void whatWouldComputeAnActThatBeginsNowhereSaysSo() throws IOException {
        String file = show(show -> ((ObjectNode) show.get("acts").get(1)).remove("entry"));

        for (String command : List.of("facts", "predict")) {
            assertThat(run(command, file, "--act", GLIDER)).isEqualTo(ExitCode.UNUSABLE);
            assertThat(caught.err())
                    .contains("act thistledown-glider does not say where it begins; crowdline check says where");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heli", "formation of many", "biplane of 3"})
    void aKindThatCannotBeMeantIsTold(String kind) throws IOException {
        assertThat(run("check", timed(kind))).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out())
                .containsPattern("error: airframes\\[2\\]: .*(nearest: helicopter|such as formation of 4"
                        + "|name a formation instead)");
    }

    @Test
    void withoutItsPlaceTheSunIsLeftOut() throws IOException {
        String file = withoutVenue("latDeg", "lonDeg");

        JsonNode act =
                json("facts", file, "--act", GLIDER, "--json").get("acts").get(0);

        assertThat(act.get("daylight").get("sunset").isNull()).isTrue();
        assertThat(act.get("figures").get(0).get("start").get("sunDeg").isNull())
                .isTrue();
        assertThat(act.get("figures").get(0).get("start").get("look").stringValue())
                .isNotEmpty();
        assertThat(run("facts", file, "--act", GLIDER)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains(
                        "the venue's latDeg and lonDeg are not given; the sun and the aircraft's own position are left out.")
                .doesNotContain("Sunset", "twilight");
    }

    @Test
    void withoutTheCrowdsDistanceNobodyIsToldWhereToLookNorHowLateTheSoundIs() throws IOException {
        String file = withoutVenue("crowdToLineM");

        JsonNode act = json("facts", file, "--json").get("acts").get(0);

        assertThat(act.findValuesAsString("kind"))
                .contains("highest", "climb")
                .doesNotContain("farthest", "sound", "looks-high");
        for (JsonNode figure : act.get("figures")) {
            assertThat(figure.get("start").isNull()).isTrue();
        }
        assertThat(run("predict", file, "--act", GLIDER, "--flights", "5")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("the venue's crowdToLineM is not given; where to look and how late the sound is are left out")
                .doesNotContain(", left", ", right", ", centre");
    }

    @Test
    void withoutItsBearingTheWindCarriesNothing() throws IOException {
        String file = withoutVenue("axisBearingDeg");

        JsonNode act = json("predict", file, "--act", GLIDER, "--flights", "5", "--json")
                .get("acts")
                .get(0);
        JsonNode calm = json("predict", file, "--act", GLIDER, "--flights", "5", "--wind-kt", "0", "--json")
                .get("acts")
                .get(0);

        for (int i = 0; i < act.get("figures").size(); i++) {
            assertThat(act.get("figures").get(i).get("driftAM").isNull()).isTrue();
            assertThat(act.get("figures").get(i).get("alongAM"))
                    .isEqualTo(calm.get("figures").get(i).get("alongAM"));
        }
        run("check", file);
        assertThat(caught.out())
                .contains(
                        "the venue's axisBearingDeg is not given; the sun and the aircraft's own position are left out; the wind"
                                + " is not counted in");
    }

    @ParameterizedTest
    @ValueSource(strings = {"latDeg,lonDeg", "elevationFt", "axisBearingDeg"})
    void aLogIsFollowedOnlyWhereThePlaceIsKnown(String keys) throws IOException {
        Path log = Files.writeString(folder.resolve("log.nmea"), "nothing");

        assertThat(run("follow", withoutVenue(keys.split(",")), log.toString(), "--act", GLIDER))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err())
                .contains("the aircraft cannot be placed without the venue's " + keys.replace(",", " and "));
    }

    @Test
    void aVenueWithHalfAPlaceIsRefused() throws IOException {
        assertThat(run("check", withoutVenue("lonDeg"))).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out()).contains("venue: latDeg is given and lonDeg is not; give both or neither");
    }

    @Test
    void whatIsLeftOutIsSaidOnce() throws IOException {
        String file = withoutVenue("latDeg", "lonDeg", "elevationFt", "axisBearingDeg", "crowdToLineM");

        assertThat(run("check", file)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out().lines().filter(line -> line.contains("not given")))
                .hasSize(1);
        assertThat(run(
                        "predict",
                        file,
                        "--flights",
                        "5",
                        "--picture",
                        folder.resolve("p.svg").toString(),
                        "--act",
                        GLIDER))
                .isEqualTo(ExitCode.FINE);
        assertThat(Files.readString(folder.resolve("p.svg")))
                .contains("display line")
                .doesNotContain("crowd line");
    }
}
