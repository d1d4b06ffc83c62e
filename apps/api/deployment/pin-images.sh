#!/bin/sh
# Pins the images that Dockerfile and docker-compose.yml name to the digests that their tags have now, so that the next
# build takes the very same bytes. Run it in the project's folder, where a container engine reaches the registry; run it
# again to move to newer ones, and read the difference.
set -eu

files='Dockerfile docker-compose.yml'
images=$(sed -nE 's/^(FROM|[[:space:]]+image:) ([^ @]+).*/\2/p' $files | sort -u)

for image in $images; do
  digest=$(docker buildx imagetools inspect "$image" --format '{{.Manifest.Digest}}')
  case $digest in
    sha256:*) ;;
    *) echo "$image has no digest: $digest" >&2; exit 1 ;;
  esac
  for file in $files; do
    sed -E "s#^(FROM|[[:space:]]+image:) $image(@sha256:[0-9a-f]+)?#\\1 $image@$digest#" "$file" > "$file.pinned"
    cat "$file.pinned" > "$file"
    rm "$file.pinned"
  done
  echo "$image@$digest"
done
