# Finds what the build needs, or says what is missing and how to get it. Read by ./tamabako and ./check.

java_level=25

jdk_level() { # prints the feature version of the JDK in folder $1, or nothing
    [ -x "$1/bin/javac" ] && [ -r "$1/release" ] || return 0
    sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release"
}

find_jdk() { # sets JAVA_HOME to a JDK of level $java_level or newer
    local on_path candidate level
    on_path=$(command -v javac 2>/dev/null || true)
    [ -n "$on_path" ] && on_path=$(dirname "$(dirname "$(readlink -f "$on_path")")")
    for candidate in "${JAVA_HOME:-}" "$on_path" /usr/lib/jvm/* /opt/*jdk* /opt/java/* \
        "$HOME"/.sdkman/candidates/java/* "$HOME"/.jdks/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
        [ -n "$candidate" ] || continue
        level=$(jdk_level "$candidate")
        if [ -n "$level" ] && [ "$level" -ge "$java_level" ]; then
            export JAVA_HOME=$candidate
            return 0
        fi
    done
    echo "Tamabako needs a JDK $java_level or newer, and found none." >&2
    echo "Looked at JAVA_HOME, the javac on the PATH, /usr/lib/jvm, /opt and the usual folders in your home." >&2
    echo "Install one (for example the package temurin-25-jdk or openjdk-25-jdk), or set JAVA_HOME to it." >&2
    return 2
}

find_maven() {
    command -v mvn >/dev/null 2>&1 && return 0
    echo "Tamabako needs Maven 3.8.7 or newer, and there is no mvn on the PATH." >&2
    echo "Install it (for example: apt-get install maven) and start again." >&2
    return 2
}

as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    elif command -v sudo >/dev/null 2>&1; then
        sudo "$@"
    else
        return 1
    fi
}

install_package() { # installs Debian packages by name
    command -v apt-get >/dev/null 2>&1 || return 1
    as_root apt-get update -qq >&2 && as_root apt-get install -y -qq "$@" >/dev/null
}
