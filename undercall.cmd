@echo off
rem Starts Undercall; builds it first if it is not built or its sources are newer.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%target\undercall.jar"
set "READY=%HOME_DIR%target\undercall.ready"

set "JAVA=java"
set "FOUND="
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "FOUND=1"
if not defined JAVA_HOME where java >nul 2>nul && set "FOUND=1"
if not defined FOUND (
  echo RUN-001 java: found none, expected a JDK 17 or newer on the path or in JAVA_HOME 1>&2
  exit /b 1
)

rem PowerShell ends with 3 if a source is newer; if it cannot be asked, what is built is used.
set "STALE="
if not exist "%READY%" set "STALE=1"
if exist "%READY%" (
  powershell -NoProfile -NonInteractive -Command "$ready = (Get-Item -LiteralPath $env:READY).LastWriteTimeUtc; $sources = 'src\main', 'pom.xml', 'shared', 'models' | ForEach-Object { Join-Path $env:HOME_DIR $_ }; if (Get-ChildItem -LiteralPath $sources -Recurse -File -ErrorAction SilentlyContinue | Where-Object { $_.LastWriteTimeUtc -gt $ready } | Select-Object -First 1) { exit 3 }"
  if errorlevel 3 if not errorlevel 4 set "STALE=1"
)

if defined STALE (
  where mvn >nul 2>nul
  if errorlevel 1 (
    echo RUN-002 mvn: found none, expected Maven 3.8 or newer to build Undercall 1>&2
    exit /b 1
  )
  echo Building Undercall; the first time, its libraries and the speech model are fetched. 1>&2
  pushd "%HOME_DIR%"
  call mvn -B -q -DskipTests package 1>&2
  if errorlevel 1 (
    popd
    exit /b 1
  )
  echo Preparing the voice. 1>&2
  "%JAVA%" -Xmx256m "-Dundercall.home=%HOME_DIR%." -jar "%JAR%" prepare 1>&2
  if errorlevel 1 (
    popd
    exit /b 1
  )
  popd
  echo ready> "%READY%"
)
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms24m -Xmx256m -Xmn12m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=25 "-Dundercall.home=%HOME_DIR%." -jar "%JAR%" %*
exit /b %ERRORLEVEL%
