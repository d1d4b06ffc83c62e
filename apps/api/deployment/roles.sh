#!/bin/sh
# Run once by the database's own image when its volume is new: an owner that may change the shape of the database, and a
# login that only serves. The service logs in as the latter, which row security binds and nothing it says can unbind.
set -eu
psql -v ON_ERROR_STOP=1 -v owner="$OWNER_PASSWORD" -v serve="$SERVE_PASSWORD" \
  --username "$POSTGRES_USER" --dbname "$POSTGRES_DB" <<'SQL'
CREATE ROLE kingplank_service NOLOGIN NOSUPERUSER NOBYPASSRLS;
CREATE ROLE kingplank_owner LOGIN PASSWORD :'owner' NOSUPERUSER NOCREATEROLE NOCREATEDB NOBYPASSRLS;
CREATE ROLE kingplank_serve LOGIN PASSWORD :'serve' NOSUPERUSER NOCREATEROLE NOCREATEDB NOBYPASSRLS IN ROLE kingplank_service;
GRANT kingplank_service TO kingplank_owner WITH ADMIN OPTION;
SELECT format('ALTER DATABASE %I OWNER TO kingplank_owner', current_database()) \gexec
ALTER SCHEMA public OWNER TO kingplank_owner;
SQL
