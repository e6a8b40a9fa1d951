# A screen for programs that open windows. Read by the scripts beside this folder, after java.sh.
# They read SCREEN, which the linter cannot see.
# shellcheck shell=bash disable=SC2034

# What a JDK needs on Debian to open a window that nobody looks at.
SCREEN_PACKAGES="xvfb libxrender1 libxtst6 libxi6 libxext6 libfreetype6 fontconfig fonts-dejavu-core"

# Sets SCREEN to yes when windows can be opened, starting a virtual screen if there is none; else to no, and says why.
# Needs JAVA_DIR, as set by need_jdk.
find_screen() {
    SCREEN=no
    if [ "$(uname)" = Darwin ]; then
        SCREEN=yes
        return 0
    fi
    if [ ! -e "$JAVA_DIR/lib/libawt_xawt.so" ]; then
        say "No windows: $JAVA_DIR is a headless JDK. Install one with windows (on Debian openjdk-17-jdk)."
        return 0
    fi
    if [ -n "${DISPLAY:-}" ]; then
        SCREEN=yes
        return 0
    fi
    install_virtual_screen
    if ! command -v Xvfb >/dev/null 2>&1; then
        say "No windows: there is no screen and no Xvfb. Install Xvfb (on Debian and Ubuntu: apt-get install xvfb;" \
            "on Fedora: dnf install xorg-x11-server-Xvfb) or set DISPLAY."
        return 0
    fi
    start_virtual_screen
}

# On Debian as root, installs what of SCREEN_PACKAGES is missing; elsewhere does nothing.
install_virtual_screen() {
    if [ ! -e /etc/debian_version ] || [ "$(id -u)" != 0 ]; then
        return 0
    fi
    local package missing=""
    for package in $SCREEN_PACKAGES; do
        if [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" != installed ]; then
            missing="$missing $package"
        fi
    done
    if [ -n "$missing" ]; then
        say "installing$missing"
        # shellcheck disable=SC2086 # one word per package
        if ! { apt-get -qq update && DEBIAN_FRONTEND=noninteractive apt-get -qq -y install --no-install-recommends $missing; } >/dev/null; then
            say "That failed."
        fi
    fi
}

start_virtual_screen() {
    SCREEN_DIR=$(mktemp -d)
    # With -displayfd the server picks a free number itself and writes it down once it is ready.
    Xvfb -displayfd 6 -screen 0 1600x1000x24 -nolisten tcp -noreset 6>"$SCREEN_DIR/number" >"$SCREEN_DIR/log" 2>&1 &
    SCREEN_PID=$!
    trap stop_virtual_screen EXIT
    trap 'exit 130' INT
    trap 'exit 143' TERM
    local tries=0
    while [ ! -s "$SCREEN_DIR/number" ] && [ $tries -lt 100 ] && kill -0 "$SCREEN_PID" 2>/dev/null; do
        sleep 0.1
        tries=$((tries + 1))
    done
    if [ -s "$SCREEN_DIR/number" ]; then
        DISPLAY=:$(tr -d '[:space:]' <"$SCREEN_DIR/number")
        export DISPLAY
        SCREEN=yes
    else
        say "No windows: Xvfb did not start."
        cat "$SCREEN_DIR/log" >&2
    fi
}

# Sets SCREENS to the beginning of the names of two virtual screens and starts them, for programs that run side by side: :91 and
# :92 have :9. Leaves it empty where find_screen found another screen than one of its own, or these do not start.
find_two_screens() {
    SCREENS=""
    if [ -z "${SCREEN_PID:-}" ]; then
        return 0
    fi
    local tens tries
    for tens in 11 12 13 14 15 16 17 18 19; do
        if [ ! -e "/tmp/.X${tens}1-lock" ] && [ ! -e "/tmp/.X${tens}2-lock" ]; then
            break
        fi
    done
    Xvfb ":${tens}1" -screen 0 1600x1000x24 -nolisten tcp -noreset >"$SCREEN_DIR/log1" 2>&1 &
    SCREEN_PIDS=$!
    Xvfb ":${tens}2" -screen 0 1600x1000x24 -nolisten tcp -noreset >"$SCREEN_DIR/log2" 2>&1 &
    SCREEN_PIDS="$SCREEN_PIDS $!"
    tries=0
    while [ $tries -lt 100 ]; do
        if [ -e "/tmp/.X11-unix/X${tens}1" ] && [ -e "/tmp/.X11-unix/X${tens}2" ]; then
            # shellcheck disable=SC2086 # one word per process
            if kill -0 $SCREEN_PIDS 2>/dev/null; then
                SCREENS=":$tens"
            fi
            return 0
        fi
        sleep 0.1
        tries=$((tries + 1))
    done
}

stop_virtual_screen() {
    # shellcheck disable=SC2086 # one word per process
    kill $SCREEN_PID ${SCREEN_PIDS:-} 2>/dev/null || true
    # shellcheck disable=SC2086
    wait $SCREEN_PID ${SCREEN_PIDS:-} 2>/dev/null || true
    rm -rf "$SCREEN_DIR"
}
