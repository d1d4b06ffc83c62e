# syntax=docker/dockerfile:1
# The service, built from the lock file and run without root, without npm and without development packages.

# Tags here, not digests: a digest is looked up where images are pulled, and a wrong one would be worse than none.
# `apps/api/deployment/pin-images.sh` writes the digest of each tag into this file and docker-compose.yml; run it
# before a release, and again for the security updates of the base image.
FROM node:24-bookworm-slim AS build
WORKDIR /build
COPY package.json package-lock.json ./
RUN npm ci --ignore-scripts --no-audit --no-fund
COPY tsconfig.json ./
COPY apps ./apps
COPY libs ./libs
COPY test ./test
RUN node apps/workshop/generate.mjs \
 && npx tsc -p tsconfig.json --incremental false \
 && node apps/desk/bundle.mjs \
 && npm prune --omit=dev --ignore-scripts --no-audit --no-fund

FROM node:24-bookworm-slim AS run
ENV NODE_ENV=production HOST=0.0.0.0 PORT=3000 DATA_DIR=/data
WORKDIR /service
RUN rm -rf /usr/local/lib/node_modules/npm /usr/local/bin/npm /usr/local/bin/npx /opt/yarn* \
 && install -d -o node -g node -m 0700 /data
COPY --from=build /build/package.json ./package.json
COPY --from=build /build/node_modules ./node_modules
COPY --from=build /build/dist/apps ./dist/apps
COPY --from=build /build/dist/libs ./dist/libs
COPY --from=build /build/dist/desk ./dist/desk
COPY docs ./docs
# The embedded database's thread is loaded from its own file.
COPY --from=build /build/apps/api/embedded ./apps/api/embedded
USER node
VOLUME /data
EXPOSE 3000
HEALTHCHECK --interval=10s --timeout=3s --start-period=30s --retries=3 \
  CMD ["node", "-e", "fetch('http://127.0.0.1:'+process.env.PORT+'/health/ready').then(r=>process.exit(r.ok?0:1),()=>process.exit(1))"]
# Node is process 1 itself, so that it receives SIGTERM and stops gently.
CMD ["node", "--enable-source-maps", "dist/apps/api/src/main.js"]
