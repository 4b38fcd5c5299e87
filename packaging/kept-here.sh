# shellcheck shell=bash
# Sourced with $home set: kept_here gets the option that keeps what Maven fetches beside what it builds, where Maven cannot write to its usual
# place. That place is below Java's user.home, which is the user's entry in the system's list and not $HOME; a user not in the list has none.
kept_here=()
javas_home=${HOME-}
if command -v getent >/dev/null 2>&1; then javas_home=$(getent passwd "$(id -u)" | cut -d: -f6 || true); fi
if [ -z "$javas_home" ] || [ "$javas_home" = '?' ] || { [ ! -w "$javas_home" ] && [ ! -w "$javas_home/.m2/repository" ]; }; then
    kept_here=("-Dmaven.repo.local=$home/target/repository")
fi
