# Finding Java and Maven, and building the program. Read by the scripts beside this folder, which set ROOT.
# shellcheck shell=bash

say() {
    printf 'crowdline: %s\n' "$*" >&2
}

# Sets JAVA to the java of JAVA_HOME or, without one, to the first on the path.
find_java() {
    if [ -n "${JAVA_HOME:-}" ]; then
        JAVA=$JAVA_HOME/bin/java
        if [ ! -x "$JAVA" ]; then
            say "JAVA_HOME is $JAVA_HOME, but there is no bin/java in it. Point JAVA_HOME at a JDK, 17 or later, or unset it."
            exit 2
        fi
    elif JAVA=$(command -v java); then
        :
    else
        say "No Java found. Install a JDK, 17 or later, or set JAVA_HOME to one."
        exit 2
    fi
}

# Sets JAVA_DIR to the home of JAVA and fails unless that is a JDK of 17 or later.
need_jdk() {
    find_java
    local settings version
    settings=$("$JAVA" -XshowSettings:properties -version 2>&1)
    JAVA_DIR=$(printf '%s\n' "$settings" | sed -n 's/^ *java\.home = //p')
    version=$(printf '%s\n' "$settings" | sed -n 's/^ *java\.specification\.version = //p')
    case $version in
        '' | 1.* | *[!0-9]*) version=8 ;;
    esac
    if [ "$version" -lt 17 ]; then
        say "$JAVA is older than Java 17. Install a JDK, 17 or later, or set JAVA_HOME to one."
        exit 2
    fi
    if [ ! -x "$JAVA_DIR/bin/javac" ]; then
        say "$JAVA_DIR can run programs but has no compiler. Install a JDK, 17 or later, or set JAVA_HOME to one."
        exit 2
    fi
}

need_mvn() {
    if ! command -v mvn >/dev/null 2>&1; then
        say "No Maven found (the command mvn). Install Maven 3.8 or later: it builds Crowdline and fetches its libraries."
        exit 2
    fi
}

# Builds target/app, the program with its libraries, unless it is newer than everything it is made from.
build_app() {
    local app=$ROOT/target/app newer
    if [ -e "$app/built" ]; then
        newer=$(find "$ROOT/pom.xml" "$ROOT/.mvn" "$ROOT/src/main" -newer "$app/built" -print | head -n 1)
        if [ -z "$newer" ]; then
            return 0
        fi
    fi

    need_jdk
    need_mvn
    say "building, which takes a minute the first time"
    mkdir -p "$ROOT/target"
    local next=$ROOT/target/app.$$
    rm -rf "$next"
    mkdir "$next"
    touch "$next/built" # before the build, so that a file saved meanwhile counts as newer
    # The run profile leaves out the checks for contributors: they slow the first start and need a JDK they know.
    if ! JAVA_HOME=$JAVA_DIR mvn -q -B -f "$ROOT/pom.xml" -P run -Dmaven.test.skip=true package >"$next/log" 2>&1; then
        cat "$next/log" >&2
        rm -rf "$next"
        say "The build failed; the reason stands above. Run scripts/test to see it with every check."
        exit 2
    fi
    cp "$ROOT/target/run/crowdline.jar" "$next/"
    cp -R "$ROOT/target/run/lib" "$next/"
    rm -f "$next/log"

    # Moved into place as a whole, so that a console that is running keeps the files it has open.
    if [ -d "$app" ]; then
        mv "$app" "$next.old"
    fi
    mv "$next" "$app"
    rm -rf "$next.old"
}
